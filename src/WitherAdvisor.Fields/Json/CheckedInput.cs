using System.Text.Json;

namespace WitherAdvisor.Fields.Json;

/// <summary>Reads what was asked for: first each field, then whether the fields fit each other.</summary>
internal static class CheckedInput
{
    /// <summary>Null where something does not fit; each that does not is added to the errors.</summary>
    public static T? Read<T>(JsonElement root, ICollection<FieldError> errors)
        where T : class
    {
        Shape shape = Shapes.Of(typeof(T));
        shape.Check(root, "", errors);
        if (errors.Count > 0)
        {
            return null;
        }

        T input = root.Deserialize<T>(JsonRules.Request)!;
        foreach (FieldError error in CrossChecks.Of(input, shape))
        {
            errors.Add(error);
        }

        return errors.Count > 0 ? null : input;
    }
}
