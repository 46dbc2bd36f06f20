namespace WitherAdvisor.Api.Http.Doors;

/// <summary>A setting of several values: one text parted by semicolons, or a list.</summary>
internal static class Listed
{
    public static IReadOnlyList<string> From(IConfiguration configuration, string key)
    {
        IConfigurationSection section = configuration.GetSection(key);
        IEnumerable<string?> texts = section.GetChildren().Select(child => child.Value).Prepend(section.Value);
        return [.. texts.SelectMany(text => (text ?? "").Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))];
    }
}
