using Microsoft.Extensions.Configuration;

namespace WitherAdvisor.Store.Sqlite;

/// <summary>Where the database file stands: as configured under Store:DatabasePath, else with the user's data.</summary>
public static class DatabasePath
{
    public const string Key = "Store:DatabasePath";

    public static string From(IConfiguration configuration) =>
        configuration[Key] is { Length: > 0 } told ? Path.GetFullPath(told) : Path.Combine(UsualFolder(), "witheradvisor.db");

    // A user without a home, as in a container, has no folder for data.
    private static string UsualFolder() =>
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData) is { Length: > 0 } data
            ? Path.Combine(data, "WitherAdvisor")
            : Path.GetFullPath("data");
}
