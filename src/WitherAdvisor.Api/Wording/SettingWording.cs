namespace WitherAdvisor.Api.Wording;

/// <summary>How a setting is held.</summary>
public static class SettingWording
{
    public const string HoldTheDifference =
        "If the night differs from the one foretold, hold the difference between the two thermometers under the mesh, not the dry bulb alone.";
}
