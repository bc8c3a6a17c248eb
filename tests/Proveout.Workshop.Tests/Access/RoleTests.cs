namespace Proveout.Workshop.Tests.Access;

public sealed class RoleTests
{
    [Fact]
    public void Each_role_may_do_what_it_is_for_and_nothing_more()
    {
        Permission[] all = [Permission.Open, Permission.See, Permission.Sign, Permission.Enter];
        Assert.Equal([Permission.Open, Permission.See], all.Where(permission => RolePolicy.Allows(AccessRole.Reader, permission)));
        Assert.Equal([Permission.Open, Permission.See, Permission.Sign], all.Where(permission => RolePolicy.Allows(AccessRole.Checker, permission)));
        Assert.Equal(all, all.Where(permission => RolePolicy.Allows(AccessRole.Builder, permission)));
        Assert.False(RolePolicy.Allows(AccessRole.Builder, (Permission)99));
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("two\nlines")]
    [InlineData("turned\u202Earound")]
    [InlineData("un\u200Bseen")]
    public void A_name_that_does_not_show_is_none(string name) => Assert.False(PersonName.IsOne(name));
}
