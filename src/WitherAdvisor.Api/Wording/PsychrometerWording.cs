using WitherAdvisor.Air;

namespace WitherAdvisor.Api.Wording;

/// <summary>Instruments of dry and wet bulb in words.</summary>
public static class PsychrometerWording
{
    public static string Name(PsychrometerKind kind) => kind switch
    {
        PsychrometerKind.Aspirated => "aspirated: a fan draws air over the bulbs",
        PsychrometerKind.Sling => "sling: whirled by hand",
        PsychrometerKind.Screen => "in a screen or a light draught",
        PsychrometerKind.Unventilated => "hung on a wall, no draught",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "No words for this instrument."),
    };
}
