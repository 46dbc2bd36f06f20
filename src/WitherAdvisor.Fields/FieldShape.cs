using System.Reflection;

namespace WitherAdvisor.Fields;

/// <summary>A named field of an object. One that is not required may be left out or null.</summary>
internal sealed record FieldShape(string Name, PropertyInfo Property, bool Required, Shape Shape);
