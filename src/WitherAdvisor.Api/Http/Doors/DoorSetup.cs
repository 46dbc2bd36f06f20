namespace WitherAdvisor.Api.Http.Doors;

/// <summary>What a request passes before any route sees it.</summary>
internal static class DoorSetup
{
    public static void AddDoors(this IServiceCollection services, IConfiguration configuration)
    {
        services.AddSingleton(HostNames.From(configuration));
        services.AddSingleton(OriginRule.From(configuration));
        services.AddSingleton<HostDoor>();
        services.AddSingleton<OriginDoor>();
        services.AddSingleton<PathDoor>();
    }

    /// <summary>To be called before anything that answers.</summary>
    public static void UseResponseHeaders(this WebApplication app) => app.Use(ResponseHeaders.Set);

    public static void UseDoors(this WebApplication app)
    {
        app.UseMiddleware<HostDoor>();
        app.UseMiddleware<OriginDoor>();
        app.UseMiddleware<PathDoor>();
    }
}
