namespace Rostrum.Rulings;
