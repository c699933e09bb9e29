using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Steps;

namespace Rostrum.Sheets.Tests.Formulas;

/// <summary>Tells the shape of a formula or step, places left out, so that two can be compared.</summary>
internal static class SyntaxShape
{
    public static string Of(Syntax? syntax) => syntax switch
    {
        null => "-",
        Syntax.Number n => $"{n.Amount}",
        Syntax.Name n => $"'{n.Words}'",
        Syntax.It => "it",
        Syntax.Me => "me",
        Syntax.Nothing => "nothing",
        Syntax.YesNo y => y.IsYes ? "yes" : "no",
        Syntax.Looks l => $"look[{l.Owner} {string.Join(' ', l.Parts.Select(Of))}]",
        Syntax.PartOf p => $"in[{p.IsOnly} {Of(p.Look)} {Of(p.Container)}]",
        Syntax.Of o => $"of[{Of(o.Noun)} {o.Label?.Text} {Of(o.Argument)}]",
        Syntax.OfLast o => $"last[{Of(o.Choice)} {o.IsMine} {Of(o.Action)}]",
        Syntax.Owned o => $"own[{o.Owner} {Of(o.What)}]",
        Syntax.Call c => $"call[{Of(c.Function)} {Of(c.Pick)} {string.Join(' ', c.Parts.Select(p => $"<{p.Lead} {Of(p.Value)} {p.Word}>"))}]",
        Syntax.Filtered f => $"where[{Of(f.Domain)} {Of(f.Where)}]",
        Syntax.Listed l => $"list[{string.Join(' ', l.Items.Select(Of))}]",
        Syntax.Range r => $"range[{Of(r.Low)} {Of(r.High)}]",
        Syntax.Binary b => $"{b.Sign}[{Of(b.Left)} {Of(b.Right)}]",
        Syntax.Negative n => $"minus[{Of(n.Operand)}]",
        _ => Said(syntax),
    };

    public static string Of(StepSyntax step) =>
        $"{step.Kind} {step.Action?.Name}{step.Block} {step.Named?.Name} {step.End} {step.FaceUp} {step.IsOther} {step.Order.Kind} {Of(step.Order.By)} {Of(step.Pick)} ({string.Join(", ", step.Parts.Select(Of))})";

    public static string Of(DomainSyntax domain) =>
        $"{domain.Amount} {domain.Number} {domain.Form} {Of(domain.From)} {Of(domain.Highest)} {Of(domain.Where)}";

    public static string Of(PickSyntax? pick) => pick is null ? "-" : $"pick[{pick.Letter?.Name} {Of(pick.Domain)} {Of(pick.Where)}]";

    private static string Said(Syntax syntax) => syntax switch
    {
        Syntax.Test t => $"test[{Of(t.Subject)} {t.IsNegated} {t.Tail} {string.Join(' ', t.Operands.Select(Of))}]",
        Syntax.Shows s => $"shows[{Of(s.Subject)} {s.IsNegated} {string.Join(' ', s.Choices.Select(Of))}]",
        Syntax.Can c => $"can[{Of(c.Subject)} {c.Action.Name} {string.Join(' ', c.Given.Select(Of))}]",
        Syntax.Done d => $"done[{Of(d.Action)} {d.IsNegated} {d.When} {Of(d.By)}]",
        Syntax.Logic l => $"{(l.IsAnd ? "and" : "or")}[{string.Join(' ', l.Operands.Select(Of))}]",
        Syntax.Not n => $"not[{Of(n.Operand)}]",
        Syntax.If i => $"if[{Of(i.Condition)} {Of(i.Then)} {Of(i.Otherwise)}]",
        _ => throw new InvalidOperationException($"No shape for {syntax}."),
    };
}
