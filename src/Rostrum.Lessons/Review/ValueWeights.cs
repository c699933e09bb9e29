namespace Rostrum.Lessons.Review;

/// <summary>How much each thing that is known of a number weighs for it being wrong.</summary>
/// <remarks>Fitted on the spoken lessons for tuning by <c>./rostrum bench review fit</c>, which prints them. The order is that of the features of <see cref="ValueReview"/>.</remarks>
internal static class ValueWeights
{
    private static readonly double[] Weights = [-6.61, 0.19, 2.16, 3.67, -3.78, -2.47, 1.13, -0.36, -1.96, -1.33, 3.96, 0.66, -0.05, 0.95, 0.65, -0.68, 3.96, 2.77, -0.84, -0.67, -0.37, 1.66, -1.37, 0.87, 0.53, 0.07, -2.35, -4.89, 0.63];

    /// <summary>How sure it is that the number is wrong, 0 to 1: logistic regression.</summary>
    public static double Confidence(double[] features) => 1 / (1 + Math.Exp(-features.Zip(Weights, (f, w) => f * w).Sum()));
}
