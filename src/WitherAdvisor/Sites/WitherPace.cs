namespace WitherAdvisor.Sites;

/// <summary>What counts for more where a plan may choose.</summary>
public enum WitherPace
{
    /// <summary>The site's wanted air is held.</summary>
    Balanced,

    /// <summary>Fuel is saved: less heat and more hours than the wanted air.</summary>
    Sparing,

    /// <summary>Hours are saved: more heat than the wanted air.</summary>
    Fast,
}
