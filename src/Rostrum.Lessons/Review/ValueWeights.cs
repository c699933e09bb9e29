namespace Rostrum.Lessons.Review;

/// <summary>How much each thing that is known of a number weighs for it being wrong.</summary>
/// <remarks>Fitted on the spoken lessons for tuning by <c>./rostrum bench review fit</c>, which prints them. The order is that of the features of <see cref="ValueReview"/>.</remarks>
internal static class ValueWeights
{
    private static readonly double[] Weights = [-10.73, -0.31, 2.54, 3.15, -2.63, -1.72, 1.67, -0.30, -1.07, -0.57, 6.53, 0.64, -0.29, 1.28, 0.16, 4.92, 0.63, 2.83, -0.82, 0.08, -0.38, 1.60, -4.79, 1.79, 0.88, 1.07, -1.22, -4.74, 1.09, -1.79, 4.81, -3.04];

    /// <summary>How sure it is that the number is wrong, 0 to 1: logistic regression.</summary>
    public static double Confidence(double[] features) => Logistic.Confidence(features, Weights);
}
