namespace WitherAdvisor.Plans.Search;

/// <summary>
/// Chooses the air of a plan: the site's wanted air where that is ready in time, gentler where it would be ready too soon,
/// harsher where too late, by as much as meets the hour.
/// </summary>
internal sealed class PlanSearch
{
    private const int Halvings = 14;
    private const int GoldenSteps = 10;
    private const int Parts = 24;

    /// <summary>Ready this near to the earliest stop, h, is on time.</summary>
    private const double OnTimeHours = 0.02;

    /// <summary>Hours that nobody tells apart.</summary>
    private const double SameHours = 0.05;

    /// <summary>Water, kg per kg dry matter, that nobody tells apart.</summary>
    private const double SameWaterDryBasis = 0.005;

    private readonly PlanProblem problem;
    private readonly AirScale scale;

    private PlanSearch(PlanProblem problem)
    {
        this.problem = problem;
        Trial = new(problem);
        scale = new(problem.Style, problem.WantedDifferenceK, SlowestFanShare(), problem.IsInSurfaceStage);
        Best = Choose();
    }

    public CandidateTrial Trial { get; }

    /// <summary>The plan that comes nearest to what is wanted; where it breaks a limit, the least bad one.</summary>
    public Candidate Best { get; }

    public static PlanSearch Run(PlanProblem problem) => new(problem);

    private Candidate Choose()
    {
        if (problem.Start.Stage == StageKind.Cooling)
        {
            return Trial.Try(problem.AirInHand ?? new(0, 0));
        }

        Candidate free = Free();
        return problem.AirInHand is { } held && Trial.Try(held) is var kept && IsKept(kept, free) ? kept : free;
    }

    /// <summary>What people hold is kept where it breaks nothing that another air would not, and leaving it is not worth it.</summary>
    private bool IsKept(Candidate kept, Candidate free) =>
        kept.Broken is null == free.Broken is null
        && (kept.HeatedHoursToTarget is null || kept.ReadyHour >= problem.ShortestHours - OnTimeHours || free.ReadyHour < problem.ShortestHours)
        && kept.Cost <= free.Cost;

    private Candidate Free()
    {
        double latest = Math.Max(problem.LongestHours, problem.Start.Hour);
        double wanted = ToTarget(AirScale.Wanted);
        if (!IsLate(wanted) && wanted >= problem.EarliestStop && wanted <= latest)
        {
            return Trial.Try(scale.At(AirScale.Wanted));
        }

        if (ToTarget(AirScale.Harshest) > latest)
        {
            return Trial.Try(scale.At(GentlestAsQuick()));
        }

        double gentlest = ToTarget(AirScale.Gentlest) < problem.EarliestStop
            ? AirScale.Gentlest
            : Latest(place => ToTarget(place) <= latest, AirScale.Harshest, AirScale.Gentlest);
        double harshest = ToTarget(AirScale.Harshest) >= problem.EarliestStop
            ? AirScale.Harshest
            : Latest(place => ToTarget(place) < problem.EarliestStop, AirScale.Harshest, gentlest);
        double nearest = Math.Clamp(AirScale.Wanted, harshest, gentlest);
        return Trial.Try(scale.At(IsLate(ToTarget(nearest)) ? Cheapest(harshest, nearest) : nearest));
    }

    /// <summary>
    /// Slow air parts the layers as dry air does: the fan is slowed no further than the ceiling's difference would part them
    /// at full speed. Beyond, it stands for part of the time.
    /// </summary>
    private double SlowestFanShare()
    {
        const int HoursLooked = 12;
        int from = Math.Min((int)problem.Start.Hour, problem.Ambient.LastHour);
        double meanK = problem.Ambient.HygrometricDifferencesK.Skip(from).Take(HoursLooked).Average();
        return Math.Clamp(meanK / problem.Style.HygrometricDifferenceCeilingK, problem.Trough.SlowestFanShare, 1);
    }

    /// <summary>Of the airs that are all too slow, the gentlest that is as quick as the harshest: no damper is opened for nothing.</summary>
    private double GentlestAsQuick()
    {
        Candidate quickest = Trial.Try(scale.At(AirScale.Harshest));
        bool IsAsQuick(Candidate other) =>
            (other.ToTargetHour <= quickest.ToTargetHour + SameHours || double.IsInfinity(quickest.ToTargetHour))
            && other.WaterLeftDryBasis <= quickest.WaterLeftDryBasis + SameWaterDryBasis;
        return Latest(place => IsAsQuick(Trial.Try(scale.At(place))), AirScale.Harshest, AirScale.Unheated);
    }

    /// <summary>Whether a wish would be missed: harsher air is then weighed against the hours.</summary>
    private bool IsLate(double toTargetHour) => toTargetHour > problem.ReadyByHour;

    private double ToTarget(double place) => Trial.Try(scale.At(place)).ToTargetHour;

    /// <summary>The last place, from one towards another, at which a thing holds that holds up to somewhere and no further.</summary>
    private static double Latest(Predicate<double> holds, double from, double to)
    {
        if (holds(to))
        {
            return to;
        }

        for (int i = 0; i < Halvings; i++)
        {
            double middle = (from + to) / 2;
            (from, to) = holds(middle) ? (middle, to) : (from, middle);
        }

        return from;
    }

    /// <summary>The cheapest place between two: of places side by side the cheapest, and what lies about it by golden section.</summary>
    private double Cheapest(double from, double to)
    {
        double step = (to - from) / Parts;
        int best = Enumerable.Range(0, Parts + 1).MinBy(part => Cost(from + part * step));
        return CheapestNear(from + Math.Max(best - 1, 0) * step, from + Math.Min(best + 1, Parts) * step);
    }

    private double CheapestNear(double from, double to)
    {
        const double Golden = 0.6180339887498949;
        double left = to - Golden * (to - from);
        double right = from + Golden * (to - from);
        (double atLeft, double atRight) = (Cost(left), Cost(right));
        for (int i = 0; i < GoldenSteps; i++)
        {
            if (atLeft <= atRight)
            {
                (to, right, atRight) = (right, left, atLeft);
                left = to - Golden * (to - from);
                atLeft = Cost(left);
            }
            else
            {
                (from, left, atLeft) = (left, right, atRight);
                right = from + Golden * (to - from);
                atRight = Cost(right);
            }
        }

        return (from + to) / 2;
    }

    private double Cost(double place) => Trial.Try(scale.At(place)).Cost;
}
