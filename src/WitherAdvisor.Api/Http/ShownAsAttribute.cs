namespace WitherAdvisor.Api.Http;

/// <summary>The type whose JSON a text property holds, for the OpenAPI document.</summary>
[AttributeUsage(AttributeTargets.Property)]
internal sealed class ShownAsAttribute(Type type) : Attribute
{
    public Type Type { get; } = type;
}
