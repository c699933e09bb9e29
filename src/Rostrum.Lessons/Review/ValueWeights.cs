namespace Rostrum.Lessons.Review;

/// <summary>How much each thing that is known of a number weighs for it being wrong.</summary>
/// <remarks>Fitted on the spoken lessons for tuning by <c>./rostrum bench review fit</c>, which prints them. The order is that of the features of <see cref="ValueReview"/>.</remarks>
internal static class ValueWeights
{
    private static readonly double[] Weights = [-6.49, 0.28, 2.37, 3.84, -3.63, -2.38, 1.00, -0.45, -1.96, -1.42, 3.95, 1.00, -0.40, 0.89, 0.74, -0.87, 3.68, 2.79, -1.02, -0.80, -0.67, 1.64, -1.49, 0.43, 0.57, 0.04, -2.23, -5.07, 0.83];

    /// <summary>How sure it is that the number is wrong, 0 to 1: logistic regression.</summary>
    public static double Confidence(double[] features) => 1 / (1 + Math.Exp(-features.Zip(Weights, (f, w) => f * w).Sum()));
}
