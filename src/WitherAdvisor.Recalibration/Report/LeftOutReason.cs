namespace WitherAdvisor.Recalibration.Report;

/// <summary>Why an outcome was not used.</summary>
public enum LeftOutReason
{
    /// <summary>Nobody knows when it left the trough.</summary>
    HoursUnknown,

    /// <summary>Too little is known of the weather, and nobody measured or felt the water on the leaf.</summary>
    WeatherUnknown,

    /// <summary>Nothing was weighed or oven-dried.</summary>
    NothingFound,

    /// <summary>The air under the mesh is not known for any hour.</summary>
    NoAir,

    /// <summary>Air under the mesh is out of any trough's range.</summary>
    AirOutOfRange,

    /// <summary>Hours on the trough are out of any wither's range.</summary>
    HoursOutOfRange,

    /// <summary>Green weight, area, airflow or pressure is out of any trough's range.</summary>
    LoadOutOfRange,

    /// <summary>The withered leaf weighs no less than the green.</summary>
    HeavierThanGreen,

    /// <summary>A weight or moisture found is not possible.</summary>
    FindingOutOfRange,

    /// <summary>It was loaded in lots, and a bed that grows is not yet learned from.</summary>
    LoadedInLots,
}
