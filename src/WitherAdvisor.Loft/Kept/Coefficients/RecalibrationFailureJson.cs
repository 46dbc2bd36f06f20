using System.Text.Json;

namespace WitherAdvisor.Loft.Kept.Coefficients;

/// <summary>Why a recalibration failed, as kept: a code. Version 0.1.0 kept sentences; they come back as said then.</summary>
public static class RecalibrationFailureJson
{
    private static readonly JsonSerializerOptions Written = ClosedFamilyJson.Of(typeof(RecalibrationFailure));

    public static string Write(RecalibrationFailure failure) => JsonSerializer.Serialize(failure, Written);

    // No sentence begins with a brace.
    public static RecalibrationFailure Read(string kept) => kept.StartsWith('{')
        ? JsonSerializer.Deserialize<RecalibrationFailure>(kept, Written)!
        : new RecalibrationFailure.SaidThen(kept);
}
