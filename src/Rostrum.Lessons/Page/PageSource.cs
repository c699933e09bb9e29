namespace Rostrum.Lessons.Page;

/// <summary>A place where rules stand.</summary>
/// <param name="Title">Its name, such as <c>rulebook</c>.</param>
/// <param name="Printing">Which printing or date.</param>
/// <param name="Rank">1 weighs most; where sources disagree the lower rank number wins. Null where nobody weighed it.</param>
/// <param name="Pages">The pages that the lesson leans on, such as <c>2 to 9, 11, 12</c>.</param>
public sealed record PageSource(string Title, string Printing, int? Rank, string Pages);
