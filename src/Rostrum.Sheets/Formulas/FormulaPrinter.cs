using System.Globalization;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Formulas;

/// <summary>Writes a formula in its one canonical spelling: single blanks, digits for numbers, <c>is</c> for <c>am</c>, no bracket that is not needed.</summary>
/// <remarks>Reading what it writes gives the same formula again; the grammar test holds it to that.</remarks>
internal static partial class FormulaPrinter
{
    // How tightly a formula binds; a looser one inside a tighter place stands in brackets.
    private const int Loosest = 0;
    private const int Truth = 1;
    private const int Negation = 2;
    private const int Tested = 3;
    private const int Added = 4;
    private const int Multiplied = 5;
    private const int Tight = 6;

    /// <summary>The whole formula.</summary>
    public static string Print(Syntax syntax) => At(Loosest, syntax);

    /// <summary>A formula where only a sum may stand.</summary>
    public static string PrintSum(Syntax syntax) => At(Added, syntax);

    /// <summary>A formula where only a part that holds together by itself may stand.</summary>
    public static string PrintFactor(Syntax syntax) => At(Tight, syntax);

    /// <summary>A formula where only a truth may stand.</summary>
    public static string PrintTruth(Syntax syntax) => At(Truth, syntax);

    /// <summary>What is gone through.</summary>
    public static string Print(PickSyntax pick)
    {
        string letter = pick.Letter is null ? "" : $"{pick.Letter.Name} in ";
        string where = pick.Where is null ? "" : $" where {At(Truth, pick.Where)}";
        return $"{letter}{At(Added, pick.Domain)}{where}";
    }

    private static string At(int place, Syntax syntax) => LevelOf(syntax) < place ? $"({Inner(syntax)})" : Inner(syntax);

    private static int LevelOf(Syntax syntax) => syntax switch
    {
        Syntax.If or Syntax.Nothing => Loosest, // `is (nothing)` compares, `is nothing` asks whether there is one.
        Syntax.Logic => Truth,
        Syntax.Not => Negation,
        Syntax.Test or Syntax.Shows or Syntax.Can or Syntax.Done => Tested,
        Syntax.Binary { Sign: "times" } => Multiplied,
        Syntax.Binary => Added,
        _ => Tight,
    };

    private static string Inner(Syntax syntax) => syntax switch
    {
        Syntax.Number n => n.Amount.ToString(CultureInfo.InvariantCulture),
        Syntax.Name n => n.Words,
        Syntax.Unknown u => u.Words,
        Syntax.It => "it",
        Syntax.Me => "me",
        Syntax.Nothing => "nothing",
        Syntax.YesNo y => y.IsYes ? "yes" : "no",
        Syntax.Looks l => Looks(l),
        Syntax.PartOf p => $"{(p.IsOnly ? "the " : "")}{Looks(p.Look)} in {At(Tight, p.Container)}",
        Syntax.Of o => Of(o),
        Syntax.OfLast o => $"{o.Choice.Words} of {(o.IsMine ? "my " : "")}last {o.Action.Words}",
        Syntax.Owned o => OwnerWord(o.Owner) + o.What.Words,
        Syntax.Call c => Call(c),
        Syntax.Filtered f => $"({At(Loosest, f.Domain)} where {At(Truth, f.Where)})",
        Syntax.Listed l => $"({string.Join(", ", l.Items.Select(Print))})",
        Syntax.Range r => $"({At(Added, r.Low)} to {At(Added, r.High)})",
        Syntax.Binary b => Binary(b),
        Syntax.Negative n => $"minus {At(Tight, n.Operand)}",
        _ => Said(syntax),
    };

    private static string Binary(Syntax.Binary binary)
    {
        int level = LevelOf(binary);
        return $"{At(level, binary.Left)} {binary.Sign} {At(level + 1, binary.Right)}";
    }

    private static string Of(Syntax.Of of)
    {
        bool isUpright = of.Noun.Senses is [{ Symbol: StepName { Direction.Name: "above" or "below" } }];
        string label = of.Label is { } token ? $" {token.Text}" : "";
        return $"{of.Noun.Words}{label}{(isUpright ? "" : " of")} {At(Tight, of.Argument)}";
    }

    private static string Looks(Syntax.Looks looks) => OwnerWord(looks.Owner) + string.Join(' ', looks.Parts.Select(p => p.Words));

    private static string OwnerWord(Owner owner) => owner switch
    {
        Owner.My => "my ",
        Owner.Their => "their ",
        _ => "",
    };

    private static string Call(Syntax.Call call)
    {
        if (call.Function.Senses.Any(s => s.Symbol is OperationName { Operation.Id: Op.Run }) && call.Pick is { } run)
        {
            string from = At(Added, run.Domain);
            return $"{call.Function.Words}({run.Letter!.Name} from {from} going {At(Added, call.Parts[0].Value!)} while {At(Truth, run.Where!)})";
        }

        IEnumerable<string> parts = call.Parts.Select(PartWords);
        return $"{call.Function.Words}({string.Join(", ", call.Pick is null ? parts : parts.Prepend(Print(call.Pick)))})";
    }

    private static string PartWords(Part part) => part switch
    {
        { Lead: null } => Print(part.Value!),
        { Value: null } when part.Word == part.Lead => part.Lead,
        { Value: null } => $"{part.Lead} {part.Word}",
        _ => $"{part.Lead} {Print(part.Value!)}",
    };
}
