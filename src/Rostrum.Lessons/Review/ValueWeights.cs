namespace Rostrum.Lessons.Review;

/// <summary>How much each thing that is known of a number weighs for it being wrong.</summary>
/// <remarks>Fitted on the spoken lessons for tuning by <c>./rostrum bench review fit</c>, which prints them. The order is that of the features of <see cref="ValueReview"/>.</remarks>
internal static class ValueWeights
{
    private static readonly double[] Weights = [-8.91, -0.39, 2.00, 3.81, -2.56, -1.62, 1.30, 0.03, -1.51, -0.70, 5.38, 0.57, -0.43, 0.93, 0.31, 1.83, 4.57, 2.61, -0.65, 0.05, -0.68, 1.28, -3.80, 1.71, 0.73, 0.85, -1.13, -5.53, 0.39, -1.09, 4.03, -3.02];

    /// <summary>How sure it is that the number is wrong, 0 to 1: logistic regression.</summary>
    public static double Confidence(double[] features) => Logistic.Confidence(features, Weights);
}
