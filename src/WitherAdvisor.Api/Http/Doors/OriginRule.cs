namespace WitherAdvisor.Api.Http.Doors;

/// <summary>The origins whose pages may change something: this service's own, and those that the operator names.</summary>
internal sealed class OriginRule(IReadOnlyList<string> configured)
{
    /// <summary>Origins with scheme, and port where it is not the scheme's own, parted by semicolons; for a proxy that speaks TLS for us.</summary>
    public const string Key = "Hosts:Origins";

    /// <summary>As the operator configured it.</summary>
    /// <exception cref="InvalidOperationException">What is configured is no origin.</exception>
    public static OriginRule From(IConfiguration configuration)
    {
        IReadOnlyList<string> origins = Listed.From(configuration, Key);
        return origins.FirstOrDefault(origin => !IsOrigin(origin)) is { } wrong
            ? throw new InvalidOperationException($"{Key} holds '{wrong}'; allowed are origins as browsers send them (https://loft.example), parted by semicolons.")
            : new(origins);
    }

    public string Allowed(HttpRequest request) => string.Join(", ", configured.Prepend(Own(request)));

    public bool Know(string origin, HttpRequest request) =>
        configured.Append(Own(request)).Contains(origin, StringComparer.OrdinalIgnoreCase);

    /// <summary>Without the port where it is the scheme's own: so browsers write it, and so the two can be compared.</summary>
    private static string Own(HttpRequest request) =>
        Uri.TryCreate($"{request.Scheme}://{request.Host}", UriKind.Absolute, out Uri? own) ? own.GetLeftPart(UriPartial.Authority) : "";

    private static bool IsOrigin(string text) =>
        Uri.TryCreate(text, UriKind.Absolute, out Uri? origin)
        && (origin.Scheme == Uri.UriSchemeHttp || origin.Scheme == Uri.UriSchemeHttps)
        && string.Equals(origin.GetLeftPart(UriPartial.Authority), text, StringComparison.OrdinalIgnoreCase);
}
