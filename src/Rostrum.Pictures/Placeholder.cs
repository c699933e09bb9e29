namespace Rostrum.Pictures;
