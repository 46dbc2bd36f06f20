using Mono.Cecil;
using Mono.Cecil.Cil;

namespace WitherAdvisor.Mutants.Making;

/// <summary>
/// Puts two plain fields in the place of the switch that dotnet-stryker compiles into a library. Its own asks files and
/// notes under a lock what was passed, at each of the thousand places of every step of a bed.
/// </summary>
internal static class FastSwitch
{
    public const string TypeName = "MutantsInPlace";
    public const string Active = nameof(Active);
    public const string Passed = nameof(Passed);

    /// <summary>Rewrites a mutated library.</summary>
    /// <param name="from">As dotnet-stryker compiled it.</param>
    /// <param name="to">Where to write it.</param>
    public static void Put(string from, string to)
    {
        using AssemblyDefinition library = AssemblyDefinition.ReadAssembly(from);
        TypeDefinition slow = library.MainModule.Types.Single(type => type.Name == "MutantControl");
        slow.Methods.Remove(slow.Methods.Single(method => method.IsConstructor && method.IsStatic));
        Rewrite(slow.Methods.Single(method => method.Name == "IsActive"), Fields(library.MainModule));
        library.Write(to);
    }

    private static (FieldDefinition Active, FieldDefinition Passed) Fields(ModuleDefinition module)
    {
        const FieldAttributes open = FieldAttributes.Public | FieldAttributes.Static;
        TypeDefinition holder = new("", TypeName, TypeAttributes.Public | TypeAttributes.BeforeFieldInit, module.TypeSystem.Object);
        FieldDefinition active = new(Active, open, module.TypeSystem.Int32);
        FieldDefinition passed = new(Passed, open, new ArrayType(module.TypeSystem.Boolean));
        holder.Fields.Add(active);
        holder.Fields.Add(passed);
        module.Types.Add(holder);
        return (active, passed);
    }

    /// <summary>passed[id] = true; return id == active;</summary>
    private static void Rewrite(MethodDefinition isActive, (FieldDefinition Active, FieldDefinition Passed) fields)
    {
        isActive.ImplAttributes |= MethodImplAttributes.AggressiveInlining;
        isActive.Body = new MethodBody(isActive);
        ILProcessor code = isActive.Body.GetILProcessor();
        code.Emit(OpCodes.Ldsfld, fields.Passed);
        code.Emit(OpCodes.Ldarg_0);
        code.Emit(OpCodes.Ldc_I4_1);
        code.Emit(OpCodes.Stelem_I1);
        code.Emit(OpCodes.Ldarg_0);
        code.Emit(OpCodes.Ldsfld, fields.Active);
        code.Emit(OpCodes.Ceq);
        code.Emit(OpCodes.Ret);
    }
}
