using System.Collections.Immutable;
using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;
using Rostrum.Text;

namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>The names of the bench sheet, declared by hand: a small board with ware, a market, sticks, orders and dice for two players.</summary>
internal static class BenchSheet
{
    /// <summary>Fresh declarations; nothing is shared between two of them.</summary>
    public static Declarations Declare(int players = 2)
    {
        var declare = new Declaring { Declared = { Players = (players, players) } };
        Kind ware = declare.Piece("ware", "ware", [("form", false, "bowl jug plate lamp"), ("glaze", false, "ash iron copper"), ("wear", true, "whole cracked")]);
        Kind stick = declare.Piece("stick", "sticks", []);
        declare.Die("fire die", "fire dice", "1 2 3 4 5 crescent");
        Kind order = declare.Cards("order", "orders", ["First order", "Second order"], [("picture", Sort.Drawing), ("worth", Sort.Number)]);
        declare.Board("field", 3, 3, "bay", "tier", "shelf");
        declare.Place("sticks", PlaceForm.Heap, true, [stick]);
        declare.Place("carried", PlaceForm.Heap, true, [ware]);
        declare.Place("crate", PlaceForm.Bag, false, [ware]);
        declare.Place("order pile", PlaceForm.Deck, false, [order]);
        declare.Place("accepted", PlaceForm.Heap, true, [order]);
        declare.Row("market", 3, "stall", [ware]);
        declare.Mark("coins", Sort.Number, true);
        declare.Mark("leader", Sort.Player, false);
        declare.Constant("limit", 3);
        declare.Table("run points");
        declare.Word("touching", Sort.Truth, ("s", Sort.Space), ("t", Sort.Space));
        declare.Word("clash", Sort.Truth, ("v", Sort.ThingOf(ware)), ("w", Sort.ThingOf(ware)));
        declare.Word("set worth", Sort.Number, ("w", Sort.SetOf(Sort.ThingOf(ware))));
        declare.Word("open", Sort.Truth, ("s", Sort.Space));
        declare.Word("ready", Sort.Truth, ("c", Sort.ThingOf(order)));
        declare.Word("lit", Sort.Truth);
        declare.Action("lay", "lay (what) on (spot)");
        declare.Action("trade", null);
        declare.Action("use the kiln", "use the kiln on (shelf)");
        return declare.Declared;
    }

    /// <summary>The bench with letters as a word or an action would have them: spaces s and t, ware v and w, numbers m and n, a player p.</summary>
    public static (Declarations Declared, Vocabulary Names, Scope Scope) WithLetters()
    {
        Declarations declared = Declare();
        Vocabulary names = declared.Names.Inner();
        var scope = new Scope();
        Sort ware = Sort.ThingOf(declared.Kinds.Keys.First());
        foreach ((string letter, Sort sort) in (ReadOnlySpan<(string, Sort)>)[("s", Sort.Space), ("t", Sort.Space), ("v", ware), ("w", ware), ("m", Sort.Number), ("n", Sort.Number), ("p", Sort.Player)])
        {
            var name = new LetterName(letter, null);
            names.Add(letter, name);
            scope.Declare(name, sort);
        }

        return (declared, names, scope);
    }

    /// <summary>A text as the file <c>sheet.yaml</c>.</summary>
    public static FormulaText Text(string words) => FormulaText.Of(words, "sheet.yaml");

    /// <summary>Reads and binds one formula; what is wrong with it.</summary>
    public static ImmutableArray<Diagnostic> ProblemsOf(string formula, int players = 2)
    {
        Declarations declared = Declare(players);
        var problems = new DiagnosticBag();
        Syntax syntax = new FormulaParser(Text(formula), declared.Names, problems).ReadAll();
        new Binder(declared, new Scope(), problems, []).Bind(syntax);
        return problems.InOrder();
    }

    /// <summary>The same with the letters of the bench at hand.</summary>
    public static ImmutableArray<Diagnostic> ProblemsWithLetters(string formula)
    {
        (Declarations declared, Vocabulary names, Scope scope) = WithLetters();
        var problems = new DiagnosticBag();
        Syntax syntax = new FormulaParser(Text(formula), names, problems).ReadAll();
        new Binder(declared, scope, problems, []).Bind(syntax);
        return problems.InOrder();
    }
}
