using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading.Sections;

/// <summary>Reads <c>signs</c>: what the letters of drawings stand for.</summary>
internal static class SignsSection
{
    private const string Taken = ".-#_?/|~+[]";

    public static void Read(LoadContext context, OutlineNode section)
    {
        foreach (OutlineEntry entry in OutlineAsk.Entries(context, section, "the signs", "j: jug"))
        {
            string sign = entry.Key.Text.Trim();
            bool isSign = sign.Length == 1 && !char.IsAsciiDigit(sign[0]) && !Taken.Contains(sign[0], StringComparison.Ordinal);
            if (!isSign)
            {
                context.Problems.Add(SheetProblems.BadSign(entry.Key.Span, sign, entry.Value is OutlineScalar { Text.Length: 1 } turned && char.IsLetter(turned.Text[0]) ? turned.Text[0] : null));
                continue;
            }

            if (OutlineAsk.Text(context, entry.Value, "what the sign stands for") is { } scalar)
            {
                Add(context, sign[0], scalar);
            }
        }
    }

    private static void Add(LoadContext context, char sign, OutlineScalar scalar)
    {
        string name = Prose.Fold(scalar.Text);
        Named? stands = context.Declared.Names.Find(name).Select(s => s.Symbol).FirstOrDefault(s => s is Kind or AttributeValue or Card or SeatName);
        if (stands is null)
        {
            IEnumerable<string> known = context.Declared.Names.All.Where(n => n.Symbol is Kind or AttributeValue or Card or SeatName).Select(n => n.Words);
            context.Problems.Add(SheetProblems.UnknownWord(scalar.Span, name, "a kind, a value, a card or a seat", known));
            return;
        }

        context.Signs[sign] = stands;
    }
}
