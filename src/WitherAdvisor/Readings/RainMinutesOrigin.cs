namespace WitherAdvisor.Readings;

/// <summary>Who tells of how long a time a reading's rain is.</summary>
public enum RainMinutesOrigin
{
    /// <summary>The one who gave the reading.</summary>
    Told,

    /// <summary>Nobody: the spacing of its source's readings.</summary>
    Spacing,
}
