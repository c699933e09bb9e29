namespace Rostrum.Lessons.Review;

/// <summary>How much each thing that is known of a number weighs for it being wrong.</summary>
/// <remarks>Fitted on the spoken lessons for tuning by <c>./rostrum bench review fit</c>, which prints them. The order is that of the features of <see cref="ValueReview"/>.</remarks>
internal static class ValueWeights
{
    private static readonly double[] Weights = [-8.35, -0.78, 2.31, 3.30, -3.03, -2.49, 1.95, 0.00, -1.71, -0.93, 5.44, 0.68, -0.42, 1.23, 0.29, 0.86, 4.00, 3.10, -0.85, -0.11, -0.54, 1.21, -2.75, 1.31, 0.69, 0.80, -1.52, -5.04, 1.12, 4.06, -2.95];

    /// <summary>How sure it is that the number is wrong, 0 to 1: logistic regression.</summary>
    public static double Confidence(double[] features) => Logistic.Confidence(features, Weights);
}
