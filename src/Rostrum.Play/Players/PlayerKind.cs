namespace Rostrum.Play.Players;

/// <summary>How a player decides, named by what it does.</summary>
public enum PlayerKind
{
    /// <summary>Every legal option is equally likely.</summary>
    Random,
}
