namespace WitherAdvisor.Review;

/// <summary>Why a value of a review is unknown.</summary>
public enum WhyUnknown
{
    /// <summary>Nobody observed it and no forecast has it.</summary>
    NeitherObservedNorForecast,

    /// <summary>Rain of too few hours of the day is known.</summary>
    RainOfDay,

    /// <summary>The air of too few hours of the day is known.</summary>
    AirOfDay,

    /// <summary>Air and wind of too few daylight hours of the day are known.</summary>
    DaylightOfDay,

    /// <summary>Rain is known for less than three days before the day ends.</summary>
    ThreeDaysOfRain,

    /// <summary>Rain of less than half of the 24 hours before is known, or no air at all.</summary>
    WeatherBefore,
}
