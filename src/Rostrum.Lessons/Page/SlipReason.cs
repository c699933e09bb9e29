namespace Rostrum.Lessons.Page;

/// <summary>One reason of a ruling.</summary>
/// <param name="Clause">The clause's name, such as <c>copper and ash</c>.</param>
/// <param name="Says">The clause as a sentence, such as <c>Copper never stands beside ash.</c></param>
/// <param name="Cite">Source and page, such as <c>book 5</c>.</param>
/// <param name="Because">What on the table makes it bear, such as <c>ash stands at A2, beside B2</c>; empty if the sentence is enough.</param>
public sealed record SlipReason(string Clause, string Says, string Cite, string Because = "");
