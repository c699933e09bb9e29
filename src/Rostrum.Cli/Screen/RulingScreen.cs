using Rostrum.Rulings.Verdicts;
using Rostrum.Text;

namespace Rostrum.Cli.Screen;

/// <summary>Shows a ruling as a slip: the verdict, then every reason with its page.</summary>
internal sealed class RulingScreen
{
    private const int Indent = 4;

    private readonly Paper _paper = new();

    /// <summary>The slip.</summary>
    /// <param name="words">The question.</param>
    /// <param name="heading">The game and the position.</param>
    /// <param name="ruling">The answer.</param>
    public static string Of(string words, string heading, Ruling ruling)
    {
        var screen = new RulingScreen();
        screen._paper.Wrapped($"{ruling.Verdict}: {words}", 0);
        screen._paper.Line($"({heading})");
        screen._paper.Line();
        screen.Reasons(ruling);
        screen.Listed("Taken for granted", ruling.Assumed, apart: true);
        return screen._paper.ToString();
    }

    private void Reasons(Ruling ruling)
    {
        switch (ruling)
        {
            case Ruling.Legal legal:
                Because(legal.Because);
                foreach (KeptLaw law in legal.Kept)
                {
                    _paper.Edges(law.Clause, law.CiteInWords, Indent);
                }

                Listed("The price", legal.Price is { } price ? [price] : []);
                break;
            case Ruling.Illegal illegal:
                Breaches(illegal);
                break;
            case Ruling.Yes yes:
                Because(yes.Because);
                break;
            case Ruling.No no:
                Because(no.Because);
                break;
            case Ruling.Unsettled open:
                Open(open);
                break;
        }
    }

    private void Because(string reason) => _paper.Wrapped(Prose.Ended(Prose.Sentence(reason)), 0);

    private void Breaches(Ruling.Illegal illegal)
    {
        foreach (Breach breach in illegal.Breaches)
        {
            _paper.Edges(breach.Clause, breach.CiteInWords);
            _paper.Wrapped(Prose.Ended(breach.Says), Indent);
            _paper.Wrapped($"Here: {Prose.Ended(breach.Because)}", Indent);
        }
    }

    private void Open(Ruling.Unsettled open)
    {
        foreach (IGrouping<string, RulingReading> clause in open.Readings.GroupBy(r => r.Clause))
        {
            _paper.Line($"It depends on how '{clause.Key}' is read:");
            int width = clause.Max(r => DisplayText.WidthOf(r.Name));
            foreach (RulingReading reading in clause)
            {
                _paper.Line($"    {Paper.Padded(reading.Name, width)}  {reading.Verdict}");
            }
        }

        Listed("The position does not say", open.NotGiven);
        Listed("Not modelled, or not worked out yet", open.NotModelled);
    }

    private void Listed(string heading, IReadOnlyList<string> words, bool apart = false)
    {
        if (words.Count == 0)
        {
            return;
        }

        if (apart)
        {
            _paper.Line();
        }

        _paper.Line($"{heading}:");
        foreach (string word in words)
        {
            _paper.Wrapped(word, Indent);
        }
    }
}
