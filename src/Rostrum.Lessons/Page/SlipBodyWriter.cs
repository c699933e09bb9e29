using System.Collections.Immutable;

namespace Rostrum.Lessons.Page;

/// <summary>Writes what stands on a slip below its head: reasons, lines that add up, readings, what is missing.</summary>
internal static class SlipBodyWriter
{
    /// <summary>Writes each part that the slip has.</summary>
    public static void Write(PageContext page, PageSlip slip)
    {
        if (slip.Figure is { } figure)
        {
            BlockWriter.WriteFigure(page, figure);
        }

        WriteReasons(page, slip.Reasons);
        WriteLines(page, slip);
        WriteReadings(page, slip.Readings);
        WriteMissing(page, "Not modelled", slip.NotModelled);
        WriteMissing(page, "Not given", slip.NotGiven);
    }

    private static void WriteReasons(PageContext page, ImmutableArray<SlipReason> reasons)
    {
        foreach (SlipReason reason in reasons)
        {
            page.Out.Open("p", ("class", "reason"));
            if (reason.Clause.Length > 0)
            {
                page.Out.Leaf("b", $"{reason.Clause}.", ("class", "clause")).Text(" ");
            }

            page.Out.Text(reason.Says).Text(" ");
            if (reason.Because.Length > 0)
            {
                page.Out.Leaf("span", $"Here: {reason.Because}.", ("class", "because")).Text(" ");
            }

            page.Out.Leaf("span", reason.Cite, ("class", "cite")).Close().Line();
        }
    }

    private static void WriteLines(PageContext page, PageSlip slip)
    {
        if (slip.Lines.IsEmpty)
        {
            return;
        }

        page.Out.Open("table", ("class", "lines")).Leaf("caption", $"{slip.FullTitle}, line by line", ("class", "unseen"))
            .Open("thead", ("class", "unseen")).Open("tr").Leaf("th", "Line", ("scope", "col")).Leaf("th", "Points", ("scope", "col")).Close().Close()
            .Open("tbody").Line();
        foreach (SlipLine line in slip.Lines)
        {
            WriteLine(page, line);
        }

        page.Out.Close().Line();
        if (slip.Lines.Length > 1)
        {
            WriteSum(page, slip);
        }

        page.Out.Close().Line();
    }

    private static void WriteSum(PageContext page, PageSlip slip) =>
        page.Out.Open("tfoot").Open("tr").Leaf("th", slip.Answer is SlipAnswer.Total { IsAtLeast: true } ? "At least" : "Together", ("scope", "row"))
            .Leaf("td", SlipWords.Points(slip.Lines.Sum(line => line.Points)), ("class", "value")).Close().Close();

    private static void WriteLine(PageContext page, SlipLine line)
    {
        page.Out.Open("tr").Open("th", ("scope", "row")).Leaf("span", line.Words, ("class", line.Cite.Length > 0 ? "clause" : null));
        WriteAside(page, "cite", line.Cite);
        page.Out.Close().Leaf("td", SlipWords.Points(line.Points), ("class", "value")).Close().Line();
        foreach (SlipLine part in line.Because)
        {
            // A part that is the whole line has its points beside the line already.
            string points = line.Because.Length == 1 ? "" : $": {SlipWords.Points(part.Points)}";
            page.Out.Open("tr", ("class", "part")).Open("th", ("scope", "row")).Text(part.Words)
                .Leaf("span", points, ("class", "part-points")).Close().Open("td").Close().Close().Line();
        }
    }

    private static void WriteAside(PageContext page, string kind, string words)
    {
        if (words.Length > 0)
        {
            page.Out.Text(" ").Leaf("span", words, ("class", kind));
        }
    }

    private static void WriteReadings(PageContext page, ImmutableArray<SlipReading> readings)
    {
        if (readings.IsEmpty)
        {
            return;
        }

        page.Out.Open("table", ("class", "lines readings")).Leaf("caption", "Still open: it depends on the reading")
            .Open("thead", ("class", "unseen")).Open("tr").Leaf("th", "Reading", ("scope", "col")).Leaf("th", "Gives", ("scope", "col")).Close().Close()
            .Open("tbody").Line();
        foreach (SlipReading reading in readings)
        {
            page.Out.Open("tr").Open("th", ("scope", "row")).Leaf("span", reading.Name, ("class", "clause"));
            WriteAside(page, "because", reading.Says);
            page.Out.Close().Leaf("td", reading.Gives, ("class", "value")).Close().Line();
        }

        page.Out.Close().Close().Line();
    }

    private static void WriteMissing(PageContext page, string label, ImmutableArray<string> missing)
    {
        foreach (string what in missing)
        {
            page.Out.Open("p", ("class", "missing")).Leaf("b", $"{label}:").Text($" {what}").Close().Line();
        }
    }
}
