namespace WitherAdvisor.Api.Hosting;

/// <summary>The service is open to whoever reaches it, so unless told otherwise only this machine does.</summary>
internal static class Loopback
{
    public const string Address = "http://127.0.0.1:5080";

    private static readonly string[] KeysThatTell = ["urls", "http_ports", "https_ports"];

    public static void ListenOnLoopbackUnlessTold(this WebApplicationBuilder builder)
    {
        bool told = KeysThatTell.Any(key => !string.IsNullOrEmpty(builder.Configuration[key]))
            || builder.Configuration.GetSection("Kestrel:Endpoints").Exists();
        if (!told)
        {
            builder.WebHost.UseUrls(Address);
        }
    }

    public static void SayThatThereIsNoSignIn(this WebApplication app) =>
        app.Lifetime.ApplicationStarted.Register(() => app.Logger.LogWarning(
            "There is no sign-in yet: whoever reaches {Addresses} can read and change everything.",
            string.Join(", ", app.Urls)));
}
