using System.Collections.Immutable;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Progression.Architecture.Tests;

/// <summary>How types are made, in every assembly of ours.</summary>
public sealed class TypeTests
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    [Fact]
    public void Public_types_are_sealed_or_not_to_be_made() =>
        Assert.All(OurTypes.All.Where(type => type.IsVisible), type => Assert.True(type.IsSealed || type.IsAbstract, type.FullName));

    [Fact]
    public void Nothing_public_can_be_set_after_it_was_made() =>
        Assert.All(
            OurTypes.All.Where(type => type.IsVisible).SelectMany(type => type.GetProperties(Declared)).Where(property => property.SetMethod is { IsPublic: true }),
            property => Assert.True(
                property.SetMethod!.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)), $"{property.DeclaringType}.{property.Name}"));

    [Fact]
    public void Nothing_static_changes() =>
        Assert.All(
            OurTypes.All.SelectMany(type => type.GetFields(Declared)).Where(field => field.IsStatic),
            field => Assert.True(field.IsInitOnly || field.IsLiteral, $"{field.DeclaringType}.{field.Name}"));

    [Fact]
    public void A_screen_without_its_shell_knows_no_terminal()
    {
        ImmutableArray<Type> states = [.. OurTypes.All.Where(type => type.Assembly.GetName().Name == "progression" && IsState(type))];
        Assert.Contains(typeof(App.Grid.GridState), states);
        Assert.All(states, state => Assert.All(Touched(state), type => Assert.NotEqual("Terminal.Gui", type.Assembly.GetName().Name)));
    }

    /// <summary>Everything but the shell and what opens a screen on it; a state is one wherever it stands.</summary>
    private static bool IsState(Type type) =>
        type.Name.EndsWith("State", StringComparison.Ordinal) || type.Namespace is not ("Progression.App.Shell" or "Progression.App.Screens");

    private static IEnumerable<Type> Touched(Type type) =>
        type.GetMembers(Declared).SelectMany(member => member switch
        {
            FieldInfo field => [field.FieldType],
            PropertyInfo property => [property.PropertyType],
            MethodInfo method => [method.ReturnType, .. method.GetParameters().Select(parameter => parameter.ParameterType)],
            ConstructorInfo constructor => constructor.GetParameters().Select(parameter => parameter.ParameterType),
            _ => Type.EmptyTypes,
        }).SelectMany(WithParts);

    private static IEnumerable<Type> WithParts(Type type) => type.GetGenericArguments().SelectMany(WithParts).Append(type.GetElementType() ?? type);
}
