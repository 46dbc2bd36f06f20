using WitherAdvisor.Advice;
using WitherAdvisor.Api.Pages.Forms;
using WitherAdvisor.Api.Pages.Weather;
using WitherAdvisor.Leaf;
using WitherAdvisor.Loft.Kept.Batches;
using WitherAdvisor.Loft.Kept.Sites;
using WitherAdvisor.Plans;
using WitherAdvisor.Sensitivities;
using WitherAdvisor.Store;
using WitherAdvisor.Words.Units;

namespace WitherAdvisor.Api.Pages.Advice;

/// <summary>An advice as its page shows it.</summary>
/// <param name="Site">Where.</param>
/// <param name="Trough">On what.</param>
/// <param name="Batch">Which leaf.</param>
/// <param name="Outcome">What was advised.</param>
/// <param name="MadeAt">When it was advised.</param>
/// <param name="LotWarnings">Sentences on lots that should be kept apart.</param>
/// <param name="Page">What every page is drawn with.</param>
public sealed record AdviceView(
    StoredSite Site,
    StoredTrough Trough,
    StoredBatch Batch,
    AdviceOutcome Outcome,
    DateTimeOffset MadeAt,
    IReadOnlyList<string> LotWarnings,
    PageContext Page)
{
    /// <summary>Version of the model that made it.</summary>
    public required string ModelVersion { get; init; }

    /// <summary>Whether the model that runs now is another than the one that made it.</summary>
    public bool IsOfAnotherModel => ModelVersion != Loft.Advising.ModelVersion.Current;

    /// <summary>How it stands with the site's feed when the page is drawn, sentences; null where it has none.</summary>
    public string? Feed { get; init; }

    /// <summary>Which inputs matter most; null where no plan reaches its target, and where another model made the advice.</summary>
    public Sensitivity? Sensitivity { get; init; }

    /// <summary>Batches of the site that its leaf could have been mixed into.</summary>
    public IReadOnlyList<Choice> OthersRunning { get; init; } = [];

    public WallClock Clock { get; } = new(Site.TimeZone, Page.Words);

    public PersonUnits Units => Page.Units;

    public DateTimeOffset LoadedAt => Batch.Batch.LoadedAt;

    /// <summary>Hours since loading when the page is drawn; below 0 before loading.</summary>
    public double HoursNow => (Page.Now - LoadedAt).TotalHours;

    public bool OnTrough => Batch.IsRunning;

    /// <summary>The page of the weather that led to it.</summary>
    public string WeatherAddress => WeatherView.Address(Site.Id, LoadedAt);

    public DateTimeOffset At(double hour) => LoadedAt.AddHours(hour);

    /// <summary>"Tue 03:40", to five minutes.</summary>
    public string About(double hour) => Clock.DayAndClock(WallClock.ToFiveMinutes(At(hour)));

    /// <summary>Whether leaf is being withered by this plan when the page is drawn.</summary>
    public bool IsRunning(WitherPlan plan) => OnTrough && HoursNow >= 0 && HoursNow <= plan.StopHour;

    /// <summary>Whether the stop of the plan has passed and nobody said that the leaf is off.</summary>
    public bool IsOverdue(WitherPlan plan) => OnTrough && HoursNow > plan.StopHour;

    /// <summary>The setting to make now while the plan runs; before and after, the one it begins with.</summary>
    public AirSetting SettingNow(WitherPlan plan) =>
        IsRunning(plan) ? plan.Settings.Last(setting => setting.Hour <= HoursNow) : plan.Settings[0];
}
