namespace WitherAdvisor.Air;

/// <summary>How the wet bulb was aired when it was read; the slower the air, the higher it reads.</summary>
public enum PsychrometerKind
{
    /// <summary>A fan draws about 5 m/s over the bulbs (Assmann type).</summary>
    Aspirated,

    /// <summary>Whirled by hand, which moves the bulbs about as fast.</summary>
    Sling,

    /// <summary>In a screen or an open loft with a light draught, about 1 m/s.</summary>
    Screen,

    /// <summary>Hung in a room with no draught.</summary>
    Unventilated,
}
