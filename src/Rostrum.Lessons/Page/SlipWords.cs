using System.Globalization;

namespace Rostrum.Lessons.Page;

/// <summary>How slips speak.</summary>
internal static class SlipWords
{
    /// <summary>The head of a slip: <c>35 points</c>, <c>at least 12 points</c>, <c>not allowed</c>, <c>72</c>.</summary>
    public static string Of(SlipAnswer answer) => answer switch
    {
        SlipAnswer.Verdict verdict => verdict.Word,
        SlipAnswer.Total { IsAtLeast: true } total => $"at least {Counted(total.Points)}",
        SlipAnswer.Total total => Counted(total.Points),
        SlipAnswer.Fact fact => fact.Words,
        _ => throw new InvalidOperationException("A kind of answer has no words."),
    };

    /// <summary>The class that prints an answer in its tone.</summary>
    public static string ToneOf(SlipAnswer answer) => answer switch
    {
        SlipAnswer.Verdict { Tone: SlipTone.Yes } => "right",
        SlipAnswer.Verdict { Tone: SlipTone.No } => "wrong",
        SlipAnswer.Verdict => "open",
        _ => "told",
    };

    /// <summary>Points alone, with a true minus sign.</summary>
    public static string Points(long points) =>
        points < 0 ? string.Create(CultureInfo.InvariantCulture, $"\u2212{-points}") : points.ToString(CultureInfo.InvariantCulture);

    /// <summary>How a figure is known, as the last line of its slip.</summary>
    public static string Of(SlipBasis basis) => basis.Detail.Length == 0 ? $"{Of(basis.Kind)}." : $"{Of(basis.Kind)}: {basis.Detail}.";

    /// <summary>The name of a kind of figure.</summary>
    public static string Of(FigureKind kind) => kind switch
    {
        FigureKind.Exact => "Worked out exactly",
        FigureKind.Simulated => "Simulated",
        FigureKind.OwnLog => "Own log",
        _ => "As the source says",
    };

    /// <summary>What a kind of figure means, for readers who ask.</summary>
    public static string Meaning(FigureKind kind) => kind switch
    {
        FigureKind.Exact => "from the rules, with every part shown.",
        FigureKind.Simulated => "estimated from games that a program played.",
        FigureKind.OwnLog => "taken from the presenter\u2019s own plays.",
        _ => "read from the page that is named, as it stands there.",
    };

    private static string Counted(long points) => points is 1 or -1 ? $"{Points(points)} point" : $"{Points(points)} points";
}
