namespace Rostrum.Lessons.Review;

/// <summary>How much each thing that is known of a number weighs for it being wrong.</summary>
/// <remarks>Fitted on the spoken lessons for tuning by <c>./rostrum bench review fit</c>, which prints them. The order is that of the features of <see cref="ValueReview"/>.</remarks>
internal static class ValueWeights
{
    private static readonly double[] Weights = [-10.50, -0.28, 2.70, 3.28, -2.19, -1.75, 1.83, -0.44, -1.05, -0.66, 6.12, 0.63, -0.36, 1.08, 0.35, 4.19, 1.80, 2.58, -0.71, 0.06, -0.44, 1.70, -4.45, 1.27, 1.04, 1.03, -1.15, -4.96, 0.96, -1.77, 4.58, -3.14];

    /// <summary>How sure it is that the number is wrong, 0 to 1: logistic regression.</summary>
    public static double Confidence(double[] features) => Logistic.Confidence(features, Weights);
}
