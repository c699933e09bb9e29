using System.Collections.Immutable;
using System.Reflection;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Testing;

/// <summary>Makes every problem that a library can tell, with made-up words, so that a test can look at all of its messages.</summary>
/// <remarks>A problem is a static method that gives a <see cref="Diagnostic"/>, in a class whose name ends in <c>Problems</c>. Each is called
/// with several values for what it takes, so that both sides of "1 row, 3 rows" are seen.</remarks>
public static class EveryMessage
{
    private const int Rounds = 4;

    private static readonly Kind Stone = new("stone", "stones", KindFamily.Piece, null);

    private static readonly SourceText Sample = new("sheet.yaml", "move the stone\nto its place\n");

    /// <summary>The problems of the classes in a namespace and those below it.</summary>
    /// <param name="library">The library that holds them.</param>
    /// <param name="space">The namespace, such as <c>Rostrum.Text</c>.</param>
    /// <exception cref="NotSupportedException">A method takes something that this class cannot make up.</exception>
    public static IEnumerable<Diagnostic> Of(Assembly library, string space)
    {
        ArgumentNullException.ThrowIfNull(library);
        return from type in library.GetTypes()
               where type.Name.EndsWith("Problems", StringComparison.Ordinal) && $"{type.Namespace}.".StartsWith($"{space}.", StringComparison.Ordinal)
               from method in type.GetMethods(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic)
               where method.ReturnType == typeof(Diagnostic)
               from round in Enumerable.Range(0, Rounds)
               select (Diagnostic)method.Invoke(null, [.. method.GetParameters().Select(p => ValueFor(p.ParameterType, round))])!;
    }

    /// <summary>Everything that a problem says to an author: message, hint, title of the fix, notes of other places.</summary>
    public static IEnumerable<string> SaidBy(Diagnostic problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        IEnumerable<string> title = problem.Fix is { } fix ? [fix.Title] : [];
        return [problem.Message, problem.Hint, .. title, .. problem.Related.Select(r => r.Note)];
    }

    private static object? ValueFor(Type type, int round)
    {
        Type wanted = Nullable.GetUnderlyingType(type) ?? type;
        return wanted switch
        {
            _ when wanted != type && round == 3 => null,
            _ when wanted == typeof(SourceSpan) => Sample.Span(round, 4),
            _ when wanted == typeof(string) => "stone",
            _ when wanted == typeof(char) => '}',
            _ when wanted == typeof(bool) => round % 2 == 0,
            _ when wanted == typeof(int) => round,
            _ when wanted == typeof(long) => (long)round,
            _ when wanted == typeof(ulong) => (ulong)round,
            _ when wanted.IsAssignableFrom(typeof(Kind)) && wanted != typeof(object) => Stone,
            _ when wanted == typeof(Sheets.Model.Attribute) => new Sheets.Model.Attribute("colour", Stone, false, 0, null),
            _ when wanted == typeof(Place) => new Place("hand", PlaceForm.Hand, true, 0, null),
            _ when wanted == typeof(Sort) => round % 2 == 0 ? Sort.Number : Sort.SetOf(Sort.Space),
            _ when wanted.IsAssignableFrom(typeof(char[])) => new[] { 'j', 'p' },
            _ when wanted == typeof(ActionPhrase) => new ActionPhrase([new PhrasePart("lay", false), new PhrasePart("what", true)]),
            _ when wanted.IsAssignableFrom(typeof(DrawingSign[])) => new[] { new DrawingSign('s', Stone) },
            _ when wanted.IsAssignableFrom(typeof(Kind[])) => new[] { Stone },
            _ when wanted == typeof(Diagnostic) => new Diagnostic("ROS0101", Severity.Error, Sample.Span(0, 4), "A stone lies here.", "Take it away."),
            _ when wanted == typeof(Fix) => Fix.Replace(Sample.Span(0, 4), "lay"),
            _ when wanted.IsEnum => Enum.GetValues(wanted).GetValue(round % Enum.GetValues(wanted).Length),
            _ when wanted.IsAssignableFrom(typeof(ImmutableArray<TextEdit>)) => ImmutableArray<TextEdit>.Empty,
            _ when wanted.IsAssignableFrom(typeof(string[])) => new[] { "stone", "card" },
            _ when wanted.IsAssignableFrom(typeof(ImmutableArray<string>)) => ImmutableArray.Create("stone", "card"),
            _ => throw new NotSupportedException($"No {wanted.Name} can be made up: add it to EveryMessage."),
        };
    }
}
