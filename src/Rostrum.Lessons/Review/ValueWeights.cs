namespace Rostrum.Lessons.Review;

/// <summary>How much each thing that is known of a number weighs for it being wrong.</summary>
/// <remarks>Fitted on the spoken lessons for tuning by <c>./rostrum bench review fit</c>, which prints them. The order is that of the features of <see cref="ValueReview"/>.</remarks>
internal static class ValueWeights
{
    private static readonly double[] Weights = [-8.24, -0.77, 2.08, 3.90, -3.26, -2.55, 1.96, -0.07, -1.79, -1.24, 5.16, 0.64, -0.26, 1.02, 0.02, 0.65, 4.60, 3.00, -0.69, -0.44, -0.32, 0.84, -2.07, 1.61, 0.62, 0.02, -1.69, -4.84, 1.43];

    /// <summary>How sure it is that the number is wrong, 0 to 1: logistic regression.</summary>
    public static double Confidence(double[] features) => Logistic.Confidence(features, Weights);
}
