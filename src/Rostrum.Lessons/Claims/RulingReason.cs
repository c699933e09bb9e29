using Rostrum.Rulings.Verdicts;

namespace Rostrum.Lessons.Claims;

/// <summary>The reason of a ruling in one line.</summary>
internal static class RulingReason
{
    public static string Of(Ruling ruling) => ruling switch
    {
        Ruling.Legal legal => legal.Because,
        Ruling.Illegal illegal => string.Join("; ", illegal.Breaches.Select(b => $"{b.Says.TrimEnd('.')}, {b.CiteInWords}: {b.Because}")),
        Ruling.Yes yes => yes.Because,
        Ruling.No no => no.Because,
        Ruling.Unsettled open => string.Join("; ", open.Readings.Select(r => $"{r.Verdict} if {r.Name}").Concat(open.NotGiven).Concat(open.NotModelled)),
        _ => "",
    };
}
