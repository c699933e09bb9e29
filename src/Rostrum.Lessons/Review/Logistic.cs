namespace Rostrum.Lessons.Review;

/// <summary>Logistic regression.</summary>
internal static class Logistic
{
    /// <summary>How sure it is, 0 to 1.</summary>
    /// <param name="features">What is known.</param>
    /// <param name="weights">How much each weighs; as many.</param>
    public static double Confidence(double[] features, double[] weights) => 1 / (1 + Math.Exp(-features.Zip(weights, (f, w) => f * w).Sum()));
}
