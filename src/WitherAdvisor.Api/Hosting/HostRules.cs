namespace WitherAdvisor.Api.Hosting;

/// <summary>How the process listens and what it says of itself.</summary>
internal static class HostRules
{
    private const string Loopback = "http://127.0.0.1:5080";

    private static readonly string[] KeysThatTell = ["urls", "http_ports", "https_ports"];

    /// <summary>The service is open to whoever reaches it, so unless told otherwise only this machine does.</summary>
    public static void ListenOnLoopbackUnlessTold(this WebApplicationBuilder builder)
    {
        bool told = KeysThatTell.Any(key => !string.IsNullOrEmpty(builder.Configuration[key]))
            || builder.Configuration.GetSection("Kestrel:Endpoints").Exists();
        if (!told)
        {
            builder.WebHost.UseUrls(Loopback);
        }
    }

    /// <summary>A line for each request would bury the ones that matter.</summary>
    public static void LogOnlyWhatMatters(this WebApplicationBuilder builder) =>
        builder.Logging.AddFilter("Microsoft.AspNetCore", LogLevel.Warning);

    public static void SayThatThereIsNoSignIn(this WebApplication app) =>
        app.Lifetime.ApplicationStarted.Register(() => app.Logger.LogWarning(
            "There is no sign-in yet: whoever reaches {Addresses} can read and change everything.",
            string.Join(", ", app.Urls)));
}
