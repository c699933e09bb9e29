using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Idioms;

/// <summary>What a clause gives for a parameter: what it stands for in the meaning, and how the sentence says it.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="Symbol">What the meaning's name for it names: a symbol of the sheet, or a ready term or look.</param>
/// <param name="Singular">One of them in words.</param>
/// <param name="Plural">Several of them in words; of what every player has, your own.</param>
/// <param name="Number">The number, where it is a plain one.</param>
internal sealed record IdiomArgument(IdiomParameter Parameter, Named Symbol, string Singular, string Plural, long? Number);
