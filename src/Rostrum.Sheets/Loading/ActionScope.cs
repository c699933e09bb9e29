using Rostrum.Sheets.Formulas;
using Rostrum.Sheets.Model;

namespace Rostrum.Sheets.Loading;

/// <summary>The scope in which laws and powers speak of an action: its choices by their names, in the frame positions that they have.</summary>
internal static class ActionScope
{
    public static FormulaReader Open(LoadContext context, ActionFacts? action)
    {
        var scope = new Scope { Action = action?.Action };
        FormulaReader reader = context.Formulas(scope);
        foreach (ActionChoice choice in action?.Choices ?? [])
        {
            var letter = new LetterName(choice.Name, choice.At);
            reader.Declare(letter);
            scope.Declare(letter, choice.Sort);
        }

        return reader;
    }
}
