using System.Text.Json;
using WitherAdvisor.Advice;
using WitherAdvisor.Plans;
using WitherAdvisor.Plans.Explaining;
using WitherAdvisor.Plans.Writing;
using WitherAdvisor.Readings;

namespace WitherAdvisor.Loft.Records.Sent;

/// <summary>Reads the answer of REST, version 1, as it was sent.</summary>
internal static class SentAdvice
{
    private const double SameStopHours = 0.006;

    /// <summary>What was advised.</summary>
    /// <param name="answerJson">What was sent.</param>
    /// <param name="digits">What it may have been rounded from.</param>
    /// <param name="pressurePa">Of the site: an answer does not tell it.</param>
    public static AdviceOutcome Read(string answerJson, AdviceOutcome digits, double pressurePa)
    {
        using var document = JsonDocument.Parse(answerJson);
        SentFields answer = new(document.RootElement);
        return answer.Has("plan")
            ? Advised(answer, digits as AdviceOutcome.Advised, pressurePa)
            : Refused(answer, digits as AdviceOutcome.CannotAdvise);
    }

    private static AdviceOutcome.Advised Advised(SentFields answer, AdviceOutcome.Advised? digits, double pressurePa)
    {
        SentFields plan = answer.Object("plan");
        return new(
            SentPlan.Read(plan, digits?.Plan, pressurePa),
            Beside(answer.List("curve"), digits?.Curve, SentBed.Point),
            SentPlan.ReadyHours(plan.Object("ready"), digits?.ReadyHours),
            SentPlan.FinalMoisture(plan.Object("expected"), digits?.FinalMoistureWetBasis),
            Beside<FactorEffect>(answer.List("effects"), digits?.Effects, SentBed.Effect),
            Beside<WeighingCheck>(answer.List("checks"), digits?.Checks, SentBed.Check),
            Beside<LimitNotice>(answer.List("notices"), digits?.Notices, SentBed.Notice),
            Reliefs(answer, digits),
            SentLeaf.Read(answer, digits?.Leaf),
            Assumptions(answer.List("assumptions"), digits?.Assumptions),
            answer.Text("coefficient_set"),
            answer.Count("candidates_simulated"))
        {
            Broken = answer.Holds("broken") ? Beside<LimitNotice>(answer.List("broken"), digits?.Broken, SentBed.Notice) : [],
        };
    }

    /// <summary>Answers did not always tell what would meet a wish; what stands beside them does, where it is of the plan that was sent.</summary>
    private static IReadOnlyList<Relief> Reliefs(SentFields answer, AdviceOutcome.Advised? digits)
    {
        if (answer.Holds("reliefs"))
        {
            return Beside<Relief>(answer.List("reliefs"), digits?.Reliefs, SentBed.Relief);
        }

        double sentStop = answer.Object("plan").Object("ready").Number("stop_hours", 2, null);
        return digits is not null && Math.Abs(digits.Plan.StopHour - sentStop) < SameStopHours ? digits.Reliefs : [];
    }

    private static AdviceOutcome.CannotAdvise Refused(SentFields answer, AdviceOutcome.CannotAdvise? digits)
    {
        SentFields refusal = answer.Object("refusal");
        return new(
            Beside<LimitNotice>(refusal.List("binding"), digits?.Binding, SentBed.Notice),
            Beside<Relief>(refusal.List("reliefs"), digits?.Reliefs, SentBed.Relief),
            answer.Has("leaf") ? SentLeaf.Read(answer, digits?.Leaf) : null,
            Assumptions(answer.List("assumptions"), digits?.Assumptions),
            answer.Text("coefficient_set"),
            answer.Count("candidates_simulated"));
    }

    /// <summary>Each as sent, with the one that stands in its place among the digits.</summary>
    internal static IReadOnlyList<T> Beside<T>(IReadOnlyList<SentFields> sent, IReadOnlyList<T>? digits, Func<SentFields, T?, T> read)
        where T : class =>
        [.. sent.Select((one, place) => read(one, digits?.Count == sent.Count ? digits[place] : null))];

    internal static IReadOnlyList<Assumption> Assumptions(IReadOnlyList<SentFields> sent, IReadOnlyList<Assumption>? digits) =>
        Beside<Assumption>(sent, digits, Assumed);

    private static Assumption.SaidThen Assumed(SentFields sent, Assumption? meant)
    {
        string code = FormerNames.Code(sent.Text("code"));
        return new(code, sent.Text("text"), meant?.Code == code ? meant : null);
    }
}
