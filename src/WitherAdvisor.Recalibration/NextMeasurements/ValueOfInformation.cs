using MathNet.Numerics.LinearAlgebra;
using WitherAdvisor.Air;
using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.Recalibration.Report;
using WitherAdvisor.Spells;

namespace WitherAdvisor.Recalibration.NextMeasurements;

/// <summary>What would teach most next: by how much each measurement would narrow the ready time, the coefficients being as unsure as they are.</summary>
/// <remarks>
/// How much a measurement tells hangs on how the answer changes with the coefficients and on its errors, not on what will
/// be found, so it is known beforehand (Lindley 1956, to first order).
/// </remarks>
internal sealed class ValueOfInformation
{
    /// <summary>Share of the hours by which ready time is moved to see what it does to the weight.</summary>
    private const double HourShare = 0.03;

    private static readonly SpellKind[] Spells = [SpellKind.Wet, SpellKind.Ordinary, SpellKind.DryWindy];

    private readonly SiteLearned learned;
    private readonly RecalibrationSettings settings;
    private readonly Dictionary<double, SaturationTable> tables = [];
    private readonly FitPoint point;
    private readonly Dictionary<SpellKind, IReadOnlyList<ObservedWither>> typical;

    public ValueOfInformation(SiteLearned learned, IReadOnlyList<Occasion> occasions, RecalibrationSettings settings)
    {
        this.learned = learned;
        this.settings = settings;
        point = learned.Posterior.Point;
        typical = Spells.ToDictionary(spell => spell, spell => TypicalWithers.Of(occasions, spell));
        ReadyGradients = Matrix<double>.Build.DenseOfColumnVectors(
            Spells.SelectMany(spell => typical[spell]).Select(ReadyGradient));
    }

    /// <summary>Change of the logarithm of ready time with the site's coordinates, a column for each typical batch.</summary>
    public Matrix<double> ReadyGradients { get; }

    /// <summary>All questions, the one that teaches most first.</summary>
    public IReadOnlyList<NextMeasurement> Sorted()
    {
        Matrix<double> covariance = learned.Covariance;
        double before = Variance(covariance);
        return
        [
            .. PossibleMeasurement.All.SelectMany(possible => possible.Spells.Select(spell => Asked(possible, spell, covariance, before)))
                .OrderByDescending(one => one.VarianceDrop).ThenBy(one => one.Code, StringComparer.Ordinal).ThenBy(one => one.Spell),
        ];
    }

    private NextMeasurement Asked(PossibleMeasurement possible, SpellKind spell, Matrix<double> covariance, double before)
    {
        double after = typical[spell].Average(wither => Variance(After(covariance, possible.Answered(wither))));
        double drop = Math.Max(1 - after / before, 0);
        return new(possible.Code, spell, drop, Math.Sqrt(before), Math.Sqrt(after));
    }

    /// <summary>Kalman (1960): the covariance after a measurement.</summary>
    private Matrix<double> After(Matrix<double> covariance, ObservedWither measured)
    {
        OccasionTerms terms = Terms(measured, settings.Errors);
        Matrix<double> slopes = SiteSlopes(terms);
        Matrix<double> noise = Matrix<double>.Build.DenseIdentity(terms.Count) * learned.Posterior.Scale;
        Matrix<double> predicted = slopes * covariance * slopes.Transpose() + noise;
        return covariance - covariance * slopes.Transpose() * predicted.Inverse() * slopes * covariance;
    }

    private double Variance(Matrix<double> covariance)
    {
        double sum = 0;
        foreach (Vector<double> gradient in ReadyGradients.EnumerateColumns())
        {
            sum += gradient * (covariance * gradient);
        }

        return sum / ReadyGradients.ColumnCount;
    }

    /// <summary>At a given weight, ready time moves as much as brings the weight at a given time back.</summary>
    private Vector<double> ReadyGradient(ObservedWither wither)
    {
        var exact = new MeasurementErrors { OutturnRelative = 1, LeafShare = 0, MeasuredAirK = 0, SetAirK = 0 };
        ObservedWither weighed = wither with
        {
            AtLoading = LoadingReadings.None,
            Found = new(WitheredWeightKg: wither.GreenWeightKg * 0.6),
        };
        OccasionTerms now = Terms(weighed, exact);
        OccasionTerms later = Terms(weighed with { HoursOnTrough = wither.HoursOnTrough * (1 + HourShare) }, exact);
        double perLogHour = (now.Residuals[0] - later.Residuals[0]) / Math.Log(1 + HourShare);
        return SiteSlopes(now).Row(0) / -perLogHour;
    }

    private OccasionTerms Terms(ObservedWither wither, MeasurementErrors errors)
    {
        var terms = new OccasionTerms(new Occasion(wither, -1, errors, tables));
        terms.Linearise(point);
        return terms;
    }

    private static Matrix<double> SiteSlopes(OccasionTerms terms) => Matrix<double>.Build.Dense(
        terms.Count, FittedCoefficient.Count, (i, at) => terms.Slopes[i * OccasionTerms.Columns + at]);
}
