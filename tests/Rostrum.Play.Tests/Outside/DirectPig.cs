namespace Rostrum.Play.Tests.Outside;

/// <summary>Pig reckoned straight from its description, without a sheet: what a solver over the sheet is held against.</summary>
internal static class DirectPig
{
    /// <summary>The chance that the first of two wins who both play as well as can be; the first throw of a turn is a must.</summary>
    /// <param name="target">The score that wins.</param>
    public static double FirstWins(int target)
    {
        // By own score, other score and pot: the chance to win of the player who is about to decide.
        double[,,] wins = new double[target, target, target];
        double change;
        do
        {
            change = 0;
            for (int mine = 0; mine < target; mine++)
            {
                for (int theirs = 0; theirs < target; theirs++)
                {
                    for (int pot = target - mine - 1; pot >= 0; pot--)
                    {
                        double best = Math.Max(Throw(wins, target, (mine, theirs, pot)), pot == 0 ? 0 : 1 - wins[theirs, mine + pot, 0]);
                        change = Math.Max(change, Math.Abs(best - wins[mine, theirs, pot]));
                        wins[mine, theirs, pot] = best;
                    }
                }
            }
        }
        while (change > 1e-14);
        return wins[0, 0, 0];
    }

    private static double Throw(double[,,] wins, int target, (int Mine, int Theirs, int Pot) at)
    {
        double sum = 1 - wins[at.Theirs, at.Mine, 0];
        for (int face = 2; face <= 6; face++)
        {
            sum += at.Mine + at.Pot + face >= target ? 1 : wins[at.Mine, at.Theirs, at.Pot + face];
        }

        return sum / 6;
    }
}
