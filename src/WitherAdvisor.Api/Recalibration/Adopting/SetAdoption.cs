using System.Text.Json;
using WitherAdvisor.Api.Http;
using WitherAdvisor.Api.Recalibration.Answers;
using WitherAdvisor.Fields.Json;
using WitherAdvisor.Loft.Kept.Coefficients;
using WitherAdvisor.Loft;
using WitherAdvisor.Recalibration.Report;

namespace WitherAdvisor.Api.Recalibration.Adopting;

/// <summary>Adopts sets, and asks for a reason where nothing speaks for one.</summary>
internal sealed class SetAdoption(ICoefficientStore coefficients, TimeProvider clock)
{
    /// <summary>Adopts a set of a site, or the defaults, by name.</summary>
    public async Task<AdoptedSet> Adopt(string siteId, string name, AdoptionInput input, CancellationToken cancel)
    {
        bool isDefault = name == RecalibrationMapping.Defaults;
        StoredCoefficientSet? set = isDefault ? null : await coefficients.Find(siteId, name, cancel);
        if (set is null && !isDefault)
        {
            return new(null, Problem.Unknown("coefficient-set", name));
        }

        IReadOnlyList<StoredAdoption> before = await coefficients.Adoptions(siteId, cancel);
        string? adopted = before.Count > 0 ? before[0].SetName : null;
        if (adopted == set?.Name)
        {
            return new(null, Problem.Conflict("already-adopted", "The set is in use.", $"Advice for site '{siteId}' is made with '{name}' already."));
        }

        // What was in use once is restored without asking: somebody decided it then.
        bool isNew = !isDefault && before.All(adoption => adoption.SetName != name);
        if (isNew && input.OverrideReason is null && Doubt(set!, adopted) is { } doubt)
        {
            return new(null, doubt);
        }

        StoredAdoption adoption = new(siteId, set?.Name, clock.NowInMilliseconds(), input.AdoptedBy, input.OverrideReason ?? input.Reason);
        await coefficients.Adopt(adoption, cancel);
        return new(adoption, null);
    }

    /// <summary>What speaks against a set that never was in use; null where nothing does.</summary>
    private static ProblemResult? Doubt(StoredCoefficientSet set, string? adopted)
    {
        if (set.ReportJson is null)
        {
            return null;
        }

        ReportAnswer report = JsonSerializer.Deserialize<ReportAnswer>(set.ReportJson, JsonRules.Answer)!;
        string? reason = report.Verdict.Kind != VerdictKind.BetterThanCurrent ? report.Verdict.Text
            : report.ComparedWith != adopted
                ? $"It was compared with '{report.ComparedWith ?? RecalibrationMapping.Defaults}', but advice is made with '{adopted ?? RecalibrationMapping.Defaults}' by now: recalibrate once more."
            : null;
        return reason is null ? null : Problem.Conflict(
            "not-shown-better", "The set was not shown to be better than the one in use.",
            $"{reason} To adopt '{set.Name}' nevertheless, say why in override_reason.");
    }
}
