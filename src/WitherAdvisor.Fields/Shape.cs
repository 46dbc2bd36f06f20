using System.Text.Json;

namespace WitherAdvisor.Fields;

/// <summary>What a value of a request has to look like. The check and the OpenAPI document both read it.</summary>
internal abstract record Shape
{
    /// <summary>What is allowed, for people, with its unit.</summary>
    public abstract string Allowed { get; }

    /// <summary>Adds to <paramref name="errors"/> all that is wrong with a value that is there and not null.</summary>
    public abstract void Check(JsonElement value, string path, ICollection<FieldError> errors);

    protected void Refuse(JsonElement value, string path, ICollection<FieldError> errors) =>
        errors.Add(FieldError.Of(path, value, Allowed) with { Expected = this });
}
