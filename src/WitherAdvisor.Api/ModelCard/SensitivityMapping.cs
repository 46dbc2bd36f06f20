using WitherAdvisor.Api.ModelCard.Responses;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Words;
using WitherAdvisor.Words.Learning;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.ModelCard;

/// <summary>What matters most as an answer.</summary>
internal static class SensitivityMapping
{
    public static SensitivityResponse ToResponse(Sensitivity sensitivity) => new()
    {
        PlannedHours = sensitivity.PlannedHours,
        P10Hours = sensitivity.ReadyHours.P10,
        P90Hours = sensitivity.ReadyHours.P90,
        Inputs = [.. sensitivity.Inputs.Select(Bar)],
    };

    private static InputSensitivityResponse Bar(InputSensitivity bar) => new()
    {
        Code = bar.Code,
        Reach = bar.Reach,
        Unit = ShownNumber.Of(bar.PlannedValue, bar.Unit).Unit,
        LowValue = ShownNumber.Of(bar.LowValue, bar.Unit).Value,
        PlannedValue = ShownNumber.Of(bar.PlannedValue, bar.Unit).Value,
        HighValue = ShownNumber.Of(bar.HighValue, bar.Unit).Value,
        AtLowHours = bar.HoursAtLow,
        AtHighHours = bar.HoursAtHigh,
        ChangeAtLowHours = bar.ChangeAtLowHours,
        ChangeAtHighHours = bar.ChangeAtHighHours,
        NotReached = bar.NotReachedWithinHours is int within ? NotReachedWording.Sentence(Wordbook.English, within) : null,
    };
}
