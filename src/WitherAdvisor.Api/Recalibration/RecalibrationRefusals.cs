using System.Text.Json;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Recalibration.Responses;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Adopting;
using WitherAdvisor.Loft.Coefficients;
using WitherAdvisor.Loft.Recalibrating;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Api.Recalibration;

/// <summary>Why nothing was recalibrated, stopped, stated or adopted, as problems.</summary>
internal static class RecalibrationRefusals
{
    public static ProblemResult AlreadyRecalibrating(string siteId) => Http.Problem.Conflict(
        "already-recalibrating", "The site is being recalibrated.",
        $"A recalibration of site '{siteId}' is waiting or running already. Wait for it, or cancel it.");

    /// <summary>Null where it was stopped.</summary>
    public static ProblemResult? Problem(StoppedRecalibration stopped) => stopped.WasOpen ? null : Http.Problem.Conflict(
        "recalibration-ended", "The recalibration has ended.",
        $"Recalibration '{stopped.Job.Id}' has ended already: it is {stopped.Job.Status.ToString().ToLowerInvariant()}.");

    public static ProblemResult NameTaken(string name) => Http.Problem.Conflict(
        "name-taken", "The name is taken.",
        $"Sets never change and '{name}' is taken: choose another name, not beginning with {string.Join(" or ", SetStating.OwnNames)}.");

    /// <summary>Null where it was adopted.</summary>
    public static ProblemResult? Problem(AdoptionResult result, string siteId, string name) => result switch
    {
        AdoptionResult.Adopted => null,
        AdoptionResult.UnknownSet => Http.Problem.Unknown("coefficient-set", name),
        AdoptionResult.InUse => Http.Problem.Conflict("already-adopted", "The set is in use.", $"Advice for site '{siteId}' is made with '{name}' already."),
        AdoptionResult.NotShownBetter doubt => Http.Problem.Conflict(
            "not-shown-better", "The set was not shown to be better than the one in use.",
            $"{Reason(doubt)} To adopt '{doubt.Set.Name}' anyway, give a reason in override_reason."),
        _ => throw new ArgumentOutOfRangeException(nameof(result), result, "Nobody has said what this is answered with."),
    };

    private static string Reason(AdoptionResult.NotShownBetter doubt) => doubt.Verdict.Kind != VerdictKind.BetterThanCurrent
        ? ReportForm.Read(doubt.Set.ReportJson!).Verdict.Text
        : $"It was compared with '{doubt.Verdict.ComparedWith ?? SiteSet.DefaultsName}', but '{doubt.Current ?? SiteSet.DefaultsName}' is in use now. Recalibrate again.";
}
