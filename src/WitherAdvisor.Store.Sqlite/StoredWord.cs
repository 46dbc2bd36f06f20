namespace WitherAdvisor.Store.Sqlite;

/// <summary>Choices are kept as lower-case words, so that the file reads without our code and survives a new order of the members.</summary>
internal static class StoredWord
{
    public static string Of<T>(T choice)
        where T : struct, Enum => choice.ToString().ToLowerInvariant();

    public static string? Of<T>(T? choice)
        where T : struct, Enum => choice is { } known ? Of(known) : null;

    public static T? Read<T>(string? word)
        where T : struct, Enum => word is null ? null : Enum.Parse<T>(word, ignoreCase: true);
}
