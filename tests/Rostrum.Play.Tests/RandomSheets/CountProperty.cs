using System.Globalization;
using Rostrum.Play.Counting;
using Rostrum.Play.Course;
using Rostrum.Play.Layout;

namespace Rostrum.Play.Tests.RandomSheets;

/// <summary>Counts of lines of play, held against a search that knows nothing of positions that come again.</summary>
internal static class CountProperty
{
    private const int MostPlies = 3;
    private const int MostMoments = 3_000;

    /// <summary>Where the counter and the plain search differ, as far as the plain search comes.</summary>
    public static IEnumerable<string> CountsAgree(RandomSheet sheet, GameTable table)
    {
        for (int plies = 1; plies <= MostPlies; plies++)
        {
            var search = new Search(new Machine(table.Plan) { StopsAfterTurns = true }, plies);
            if (!search.Go(table.Plan.Start(), -1))
            {
                yield break;
            }

            PlyCount[] counts = [.. table.Count(plies)];
            string told = counts.Length > plies ? Told((long)counts[plies].Lines, counts[plies].Results.Select(r => (string.Join(' ', r.Winners), (long)r.Lines))) : Told(0, []);
            if (told != Told(search.Lines, search.Results.Select(r => (r.Key, r.Value))))
            {
                yield return $"ply {plies}: counted {told}, gone through one by one {Told(search.Lines, search.Results.Select(r => (r.Key, r.Value)))}";
            }
        }
    }

    private static string Told(long lines, IEnumerable<(string Winners, long Lines)> results) =>
        string.Create(CultureInfo.InvariantCulture, $"{lines} lines, {string.Join(", ", results.OrderBy(r => r.Winners, StringComparer.Ordinal).Select(r => $"{r.Lines} won by [{r.Winners}]"))}");

    // Ply 0 is over when the first turn begins.
    private sealed class Search(Machine machine, int plies)
    {
        private int _moments;

        public long Lines { get; private set; }

        public SortedDictionary<string, long> Results { get; } = [];

        public bool Go(TableState state, int ply)
        {
            if (++_moments > MostMoments)
            {
                return false;
            }

            machine.State = state;
            switch (machine.Advance())
            {
                case Moment.Decision decision:
                    return decision.Options.All(o => Go(After(state, m => m.Choose(o)), ply));
                case Moment.Chance chance:
                    return Enumerable.Range(0, chance.Event.Weights.Length).All(i => Go(After(state, m => m.Choose(chance.Event, i)), ply));
                case Moment.TurnOver when ply + 1 < plies:
                    return Go(state, ply + 1);
                case Moment.TurnOver:
                    Lines++;
                    return true;
                default:
                    End(ply);
                    return true;
            }
        }

        private TableState After(TableState state, Action<Machine> choose)
        {
            machine.State = state.Copy();
            choose(machine);
            return machine.State;
        }

        private void End(int ply)
        {
            if (ply == plies - 1)
            {
                string winners = string.Join(' ', Reckoning.Of(machine).Winners);
                Lines++;
                Results[winners] = Results.GetValueOrDefault(winners) + 1;
            }
        }
    }
}
