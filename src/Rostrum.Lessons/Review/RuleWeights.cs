namespace Rostrum.Lessons.Review;

/// <summary>How much each thing that is known of a rule weighs for it never being said.</summary>
/// <remarks>Fitted on the spoken lessons for tuning by <c>./rostrum bench review fit rules</c>, which prints them. The order is that of <see cref="HeardRule.Features"/>.</remarks>
internal static class RuleWeights
{
    private static readonly double[] Weights = [0.50, -1.48, -0.83, -1.12, 0.67, -0.03, -0.02, -0.08, 3.39, 0.23, 0.39, 0.75, 0.64, 0.80, -2.98, -0.57, -0.21, -1.07, -1.54, -0.39, 0.13];

    /// <summary>How sure it is that the rule was never said, 0 to 1: logistic regression.</summary>
    public static double Confidence(double[] features) => Logistic.Confidence(features, Weights);
}
