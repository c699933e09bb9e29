using System.Collections.Immutable;
using Rostrum.Sheets.Model;
using Rostrum.Text;
using Rostrum.Text.Outline;

namespace Rostrum.Sheets.Loading;

/// <summary>The head of a word: <c>clash (ware v, ware w)</c>.</summary>
internal sealed record WordHead(string Name, ImmutableArray<Subject> Subjects)
{
    /// <summary>Reads a head; null (with a message) where it is none.</summary>
    public static WordHead? Read(LoadContext context, OutlineScalar key)
    {
        string text = key.Text;
        int open = text.IndexOf('(', StringComparison.Ordinal);
        if (open < 0)
        {
            return new WordHead(Prose.Fold(text), []);
        }

        int close = text.LastIndexOf(')');
        string name = Prose.Fold(text[..open]);
        if (close < open || name.Length == 0 || text[(close + 1)..].Trim().Length > 0)
        {
            context.Problems.Add(SheetProblems.BadHead(key.Span, text));
            return null;
        }

        var subjects = ImmutableArray.CreateBuilder<Subject>();
        int at = open + 1;
        foreach (string part in text[(open + 1)..close].Split(','))
        {
            if (Read(context, key, part, at) is not { } subject)
            {
                return null;
            }

            subjects.Add(subject);
            at += part.Length + 1;
        }

        return new WordHead(name, subjects.ToImmutable());
    }

    private static Subject? Read(LoadContext context, OutlineScalar key, string part, int at)
    {
        string words = Prose.Fold(part);
        int blank = words.LastIndexOf(' ');
        if (blank < 0)
        {
            context.Problems.Add(SheetProblems.BadHead(key.Span, key.Text));
            return null;
        }

        string sortName = words[..blank];
        if (SubjectSorts.Find(context, sortName) is { } sort)
        {
            return new Subject(words[(blank + 1)..], sort);
        }

        int skip = part.Length - part.TrimStart().Length;
        context.Problems.Add(SheetProblems.UnknownSubject(key.SpanOf(at + skip, sortName.Length), sortName, SubjectSorts.Known(context)));
        return null;
    }
}
