using System.Collections.Immutable;
using Rostrum.Text;

namespace Rostrum.Testing.Slips;

/// <summary>What came of a slip.</summary>
public enum SlipOutcome
{
    /// <summary>A message.</summary>
    Told,

    /// <summary>Silent by design: prose or a remark was changed, which is nobody's rule.</summary>
    Prose,

    /// <summary>Silent, and right so: the text means what it meant.</summary>
    SameMeaning,

    /// <summary>The text says something else and is right by itself; what positions expect tells it, elsewhere than on its line.</summary>
    SeenByExpectations,

    /// <summary>The text says something else, is right by itself, and nothing that was asked tells it.</summary>
    OtherMeaning,
}

/// <summary>What a check says of a slip.</summary>
/// <param name="Slip">The slip.</param>
/// <param name="Outcome">Whether it is told, and if not, why.</param>
/// <param name="Messages">What is told, first what the check tells first; empty where nothing is.</param>
public sealed record SlipFinding(Slip Slip, SlipOutcome Outcome, ImmutableArray<Diagnostic> Messages)
{
    /// <summary>True where the first message underlines the slip's own place.</summary>
    public bool IsFirstAtPlace => Messages.Length > 0 && Slip.IsAt(Messages[0].At);

    /// <summary>True where one slip gave one message.</summary>
    public bool IsOne => Messages is [{ Further: 0 }];

    /// <summary>What the best fix that is offered makes of it.</summary>
    public FixWorth Offered { get; init; }

    /// <summary>What the best of the safe fixes makes of it.</summary>
    public FixWorth Safe { get; init; }

    /// <summary>Why the safe fixes may not be called safe; null where they may, or where there is none.</summary>
    public string? Unsafe { get; init; }
}

/// <summary>What a fix makes of a slip.</summary>
public enum FixWorth
{
    /// <summary>No fix is offered.</summary>
    None,

    /// <summary>Something else than stood there before.</summary>
    Other,

    /// <summary>Other letters that read back the same.</summary>
    SameMeaning,

    /// <summary>What stood there before, byte for byte.</summary>
    Restored,
}
