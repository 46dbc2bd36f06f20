using System.Text.Json;

namespace WitherAdvisor.Loft;

/// <summary>The snake_case word that a choice is kept and exported as.</summary>
public static class KeptWord
{
    public static string Of(Enum choice) => JsonNamingPolicy.SnakeCaseLower.ConvertName(choice.ToString());
}
