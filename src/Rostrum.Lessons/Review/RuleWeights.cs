namespace Rostrum.Lessons.Review;

/// <summary>How much each thing that is known of a rule weighs for it never being said.</summary>
/// <remarks>Fitted on the spoken lessons for tuning by <c>./rostrum bench review fit rules</c>, which prints them. The order is that of <see cref="HeardRule.Features"/>.</remarks>
internal static class RuleWeights
{
    private static readonly double[] Weights = [0.93, -0.45, -0.66, -1.38, -0.25, 0.07, 0.76, 0.22, 2.60, 0.00, 0.46, 0.69, 0.41, 0.68, -1.95, -1.15, -0.94, -0.96, -1.58, -0.04, -0.17];

    /// <summary>How sure it is that the rule was never said, 0 to 1: logistic regression.</summary>
    public static double Confidence(double[] features) => 1 / (1 + Math.Exp(-features.Zip(Weights, (f, w) => f * w).Sum()));
}
