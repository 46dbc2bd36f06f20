namespace WitherAdvisor.Recalibration.Fitting;

/// <summary>How much each occasion counts, and how far residuals are scaled: most are as stated, a few are grossly wrong.</summary>
/// <remarks>
/// Residuals are taken from a normal distribution, or with a small chance from one several times as wide (the contaminated
/// normal of Tukey 1960), fitted by expectation and maximisation (Dempster, Laird and Rubin 1977), so iteratively
/// reweighted least squares. Unlike Huber's weights it gives up an outcome that cannot be, and hardly touches one that can.
/// </remarks>
internal sealed class GrossErrors(RecalibrationSettings settings)
{
    /// <summary>Weight of each occasion in the fit.</summary>
    public double[] Weights { get; private set; } = [];

    /// <summary>Chance that an occasion is as stated.</summary>
    public double[] Sound { get; private set; } = [];

    /// <summary>Variance of residuals over the stated.</summary>
    public double Scale { get; private set; } = 1;

    public void Weigh(OccasionTerms[] terms)
    {
        Weights = new double[terms.Length];
        Sound = new double[terms.Length];
        double wide = 1 / (settings.GrossErrorFactor * settings.GrossErrorFactor);
        double odds = Math.Log((1 - settings.GrossErrorShare) / settings.GrossErrorShare);

        // Far from the fit all residuals are large; measured by their own middle they are not all gross errors.
        double scale = Math.Max(Scale, Middle(terms));
        double sum = settings.StatedErrorsWeigh;
        double count = settings.StatedErrorsWeigh;
        for (int i = 0; i < terms.Length; i++)
        {
            double logOdds = odds + terms[i].Count * Math.Log(settings.GrossErrorFactor)
                - terms[i].Distance * (1 - wide) / (2 * scale);
            Sound[i] = 1 / (1 + Math.Exp(-logOdds));
            Weights[i] = Sound[i] + (1 - Sound[i]) * wide;
            sum += Weights[i] * terms[i].Distance;
            count += terms[i].Count;
        }

        // However well a log fits, nobody weighs better than stated.
        Scale = Math.Max(sum / count, 1);
    }

    private static double Middle(OccasionTerms[] terms)
    {
        double[] means = [.. terms.Where(one => one.Count > 0).Select(one => one.Distance / one.Count).Order()];
        return means.Length == 0 ? 0 : means[means.Length / 2];
    }
}
