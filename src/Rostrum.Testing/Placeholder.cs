namespace Rostrum.Testing;
