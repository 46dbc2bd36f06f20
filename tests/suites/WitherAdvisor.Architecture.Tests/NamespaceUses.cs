using Mono.Cecil;
using Mono.Cecil.Cil;

namespace WitherAdvisor.Architecture.Tests;

/// <summary>Which namespace of an assembly uses which other of the same assembly: signatures, fields, attributes and method bodies.</summary>
internal sealed class NamespaceUses
{
    private readonly Dictionary<string, Dictionary<string, string>> uses = new(StringComparer.Ordinal);
    private readonly ModuleDefinition module;
    private string from = string.Empty;
    private string by = string.Empty;

    private NamespaceUses(ModuleDefinition module) => this.module = module;

    /// <summary>Namespaces that each uses, beside one type that does so.</summary>
    public static IReadOnlyDictionary<string, Dictionary<string, string>> In(string assemblyFile, Func<string, bool>? isAsked = null)
    {
        using ModuleDefinition module = ModuleDefinition.ReadModule(assemblyFile);
        var found = new NamespaceUses(module);
        foreach (TypeDefinition type in module.GetTypes().Where(type => isAsked?.Invoke(NamespaceOf(type)) ?? true))
        {
            found.NoteAllOf(type);
        }

        return found.uses;
    }

    private void NoteAllOf(TypeDefinition type)
    {
        from = NamespaceOf(type);
        by = type.FullName;
        uses.TryAdd(from, new(StringComparer.Ordinal));
        Note(type.BaseType);
        NoteEach(type.Interfaces.Select(implemented => implemented.InterfaceType));
        NoteAttributes(type);
        NoteConstraints(type);
        foreach (FieldDefinition field in type.Fields)
        {
            Note(field.FieldType);
            NoteAttributes(field);
        }

        foreach (PropertyDefinition property in type.Properties)
        {
            NoteAttributes(property);
        }

        foreach (MethodDefinition method in type.Methods)
        {
            NoteAllOf(method);
        }
    }

    private void NoteAllOf(MethodDefinition method)
    {
        Note(method.ReturnType);
        NoteConstraints(method);
        NoteAttributes(method);
        foreach (ParameterDefinition parameter in method.Parameters)
        {
            Note(parameter.ParameterType);
            NoteAttributes(parameter);
        }

        if (!method.HasBody)
        {
            return;
        }

        NoteEach(method.Body.Variables.Select(variable => variable.VariableType));
        NoteEach(method.Body.ExceptionHandlers.Select(handler => handler.CatchType));
        foreach (Instruction instruction in method.Body.Instructions)
        {
            NoteOperand(instruction.Operand);
        }
    }

    private void NoteOperand(object? operand)
    {
        switch (operand)
        {
            case TypeReference type:
                Note(type);
                break;
            case MethodReference called:
                Note(called.DeclaringType);
                Note(called.ReturnType);
                NoteEach(called.Parameters.Select(parameter => parameter.ParameterType));
                if (called is GenericInstanceMethod made)
                {
                    NoteEach(made.GenericArguments);
                }

                break;
            case FieldReference field:
                Note(field.DeclaringType);
                Note(field.FieldType);
                break;
            default:
                break;
        }
    }

    private void NoteConstraints(IGenericParameterProvider provider) =>
        NoteEach(provider.GenericParameters.SelectMany(parameter => parameter.Constraints).Select(constraint => constraint.ConstraintType));

    private void NoteAttributes(ICustomAttributeProvider provider)
    {
        foreach (CustomAttribute attribute in provider.CustomAttributes)
        {
            Note(attribute.AttributeType);
            foreach (CustomAttributeArgument argument in attribute.ConstructorArguments.Concat(attribute.Properties.Select(named => named.Argument)))
            {
                Note(argument.Type);
                Note(argument.Value as TypeReference);
            }
        }
    }

    private void NoteEach(IEnumerable<TypeReference?> types)
    {
        foreach (TypeReference? type in types)
        {
            Note(type);
        }
    }

    private void Note(TypeReference? type)
    {
        switch (type)
        {
            case null or GenericParameter:
                break;
            case GenericInstanceType made:
                Note(made.ElementType);
                NoteEach(made.GenericArguments);
                break;
            case IModifierType modified:
                Note(modified.ModifierType);
                Note(modified.ElementType);
                break;
            case TypeSpecification of:
                Note(of.ElementType);
                break;
            default:
                NoteNamed(type);
                break;
        }
    }

    private void NoteNamed(TypeReference type)
    {
        string to = NamespaceOf(type);
        if (type.Scope == module && to != from && to.Length > 0)
        {
            uses[from].TryAdd(to, $"{by} uses {type.FullName}");
        }
    }

    private static string NamespaceOf(TypeReference type) => type.DeclaringType is { } outer ? NamespaceOf(outer) : type.Namespace;
}
