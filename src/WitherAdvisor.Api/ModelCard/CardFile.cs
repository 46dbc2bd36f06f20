namespace WitherAdvisor.Api.ModelCard;

/// <summary>Texts of the model card that travel inside the service.</summary>
internal static class CardFile
{
    public static string Read(string name)
    {
        using Stream stream = typeof(CardFile).Assembly.GetManifestResourceStream($"model-card/{name}")
            ?? throw new InvalidDataException($"{name} of the model card is missing.");
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
