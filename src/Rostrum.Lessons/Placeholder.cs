namespace Rostrum.Lessons;
