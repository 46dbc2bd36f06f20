using WitherAdvisor.Coefficients;
using WitherAdvisor.Recalibration.Comparison;
using WitherAdvisor.Recalibration.Fitting;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Recalibration.Writing;

/// <summary>What was learned of each coefficient, each pair and each group.</summary>
internal static class CoefficientTables
{
    /// <summary>Pairs more alike than this are identifiability.</summary>
    private const double HighCorrelation = 0.7;

    public static IReadOnlyList<CoefficientLearning> Coefficients(
        SiteLearned learned, WitherCoefficients proposed, WitherCoefficients current, WitherCoefficients prior) =>
        [.. Enumerable.Range(0, FittedCoefficient.Count).Select(at => One(learned, at, proposed, current, prior))];

    public static IReadOnlyList<CorrelationWarning> Correlations(SiteLearned learned) =>
    [
        .. from first in Enumerable.Range(0, FittedCoefficient.Count)
           from second in Enumerable.Range(first + 1, FittedCoefficient.Count - first - 1)
           let correlation = learned.Covariance[first, second] / (learned.Deviation(first) * learned.Deviation(second))
           where Math.Abs(correlation) >= HighCorrelation
           select new CorrelationWarning(
               learned.Fitted(first).Coefficient.Name, learned.Fitted(second).Coefficient.Name, correlation),
    ];

    public static IReadOnlyList<GroupCalibration> Groups(SiteLearned learned, IReadOnlyList<Occasion> occasions, WitherCoefficients proposed)
    {
        ILookup<int, Occasion> byGroup = occasions.ToLookup(one => one.Group);
        return
        [
            .. learned.Posterior.Model.Groups.Select((group, place) =>
            {
                (double cuticle, double cuticularDeviation) = learned.Offset(place, 0);
                (double moisture, double moistureDeviation) = learned.Offset(place, 1);
                double cuticular90 = SiteLearned.Of90 * cuticularDeviation;
                double moisture90 = SiteLearned.Of90 * moistureDeviation;
                return new GroupCalibration(
                    group.Cultivar, group.Standard, byGroup[place].Count(), LearnedSets.OfGroup(learned, place, proposed),
                    Math.Exp(cuticle), Math.Exp(cuticle - cuticular90), Math.Exp(cuticle + cuticular90),
                    moisture, moisture - moisture90, moisture + moisture90);
            }),
        ];
    }

    private static CoefficientLearning One(
        SiteLearned learned, int at, WitherCoefficients proposed, WitherCoefficients current, WitherCoefficients prior)
    {
        Coefficient coefficient = learned.Fitted(at).Coefficient;
        double removed = Math.Clamp(1 - learned.Covariance[at, at] / learned.PriorVariance(at), 0, 1);
        Identifiability identifiability = removed >= 0.75 ? Identifiability.Identified
            : removed >= 0.25 ? Identifiability.Partly
            : Identifiability.NotIdentified;
        return new(
            coefficient.Name, coefficient.Symbol, coefficient.Unit, coefficient.Of(prior), coefficient.Of(current), coefficient.Of(proposed),
            learned.Value(at, -SiteLearned.Of90), learned.Value(at, SiteLearned.Of90), removed, identifiability);
    }
}
