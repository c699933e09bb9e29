namespace Rostrum.Lessons.Review;

/// <summary>How much each thing that is known of a rule weighs for it never being said.</summary>
/// <remarks>Fitted on the spoken lessons for tuning by <c>./rostrum bench review fit rules</c>, which prints them. The order is that of <see cref="HeardRule.Features"/>.</remarks>
internal static class RuleWeights
{
    private static readonly double[] Weights = [0.93, -0.52, -0.66, -1.32, -0.27, -0.04, 0.82, 0.20, 2.53, 0.03, 0.49, 0.58, 0.46, 0.69, -1.86, -1.16, -0.89, -1.03, -1.54, -0.03, -0.12];

    /// <summary>How sure it is that the rule was never said, 0 to 1: logistic regression.</summary>
    public static double Confidence(double[] features) => 1 / (1 + Math.Exp(-features.Zip(Weights, (f, w) => f * w).Sum()));
}
