namespace Rostrum.Sheets;
