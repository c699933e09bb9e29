namespace Rostrum.Rulings.Evaluation;

/// <summary>A truth in Kleene's strong logic of three values; the order is that of "and" (least) and "or" (greatest).</summary>
internal enum Kleene
{
    /// <summary>It does not hold.</summary>
    No,

    /// <summary>Nobody can say.</summary>
    Unknown,

    /// <summary>It holds.</summary>
    Yes,
}
