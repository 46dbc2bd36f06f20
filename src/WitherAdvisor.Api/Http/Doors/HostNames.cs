using System.Net;

namespace WitherAdvisor.Api.Http.Doors;

/// <summary>The names that this service answers to: this machine's own, and those that the operator names.</summary>
internal sealed class HostNames(IReadOnlyList<string> configured)
{
    /// <summary>Names or addresses without port, parted by semicolons.</summary>
    public const string Key = "Hosts:Allowed";

    private const string Localhost = "localhost";

    /// <summary>As the operator configured it.</summary>
    /// <exception cref="InvalidOperationException">What is configured is no name.</exception>
    public static HostNames From(IConfiguration configuration)
    {
        IReadOnlyList<string> names = Listed.From(configuration, Key);
        return names.FirstOrDefault(name => Uri.CheckHostName(name) is UriHostNameType.Unknown or UriHostNameType.Basic) is { } wrong
            ? throw new InvalidOperationException(
                $"{Key} holds '{wrong}'; allowed are names and addresses without scheme, port or wildcard, parted by semicolons "
                + "(loft.example;192.0.2.7). Each name that a browser may use is listed, or any web site could speak to this service.")
            : new(names);
    }

    public string Allowed => string.Join(", ", new[] { Localhost, "127.0.0.1", "[::1]" }.Concat(configured));

    public bool Know(HostString host) =>
        host.HasValue && (IsLoopback(host.Host) || configured.Contains(host.Host, StringComparer.OrdinalIgnoreCase));

    private static bool IsLoopback(string name) =>
        string.Equals(name, Localhost, StringComparison.OrdinalIgnoreCase)
        || (Uri.CheckHostName(name) is UriHostNameType.IPv4 or UriHostNameType.IPv6
            && IPAddress.TryParse(name, out IPAddress? address) && IPAddress.IsLoopback(address));
}
