#include "core/people/person.h"

#include "core/people/pin.h"

#include <gtest/gtest.h>

namespace seamclock {
namespace {

Person person(const std::string& id, const std::string& name, Role role = Role::Operator) {
    return {id, name, role, true};
}

TEST(Person, RolesHaveTheirNamesAndBack) {
    for (const Role role : {Role::Trainee, Role::Operator, Role::Foreman}) {
        EXPECT_EQ(roleOf(nameOf(role)), role);
    }
    EXPECT_EQ(nameOf(Role::Foreman), "foreman");
    EXPECT_FALSE(roleOf("Foreman").has_value());
}

TEST(Person, IsCheckedForIdAndName) {
    EXPECT_TRUE(checkPerson(person("person:ines-2", "Inés Falk")).has_value());
    EXPECT_TRUE(checkPerson(person("person:a", std::string(40, 'n'))).has_value());
    std::string umlauts;
    for (int i = 0; i < 40; ++i) {
        umlauts += "\xC3\xBC";
    }
    EXPECT_TRUE(checkPerson(person("person:a", umlauts)).has_value()) << "40 characters";
    for (const char* id : {"", "person:", "ines", "person:Ines", "person:i f", "bench:a"}) {
        EXPECT_FALSE(checkPerson(person(id, "Ines")).has_value()) << id;
    }
    EXPECT_FALSE(checkPerson(person("person:" + std::string(41, 'a'), "Ines")).has_value());
    for (const std::string& name :
         {std::string(), std::string(41, 'n'), std::string("a\nb"), std::string(" a"),
          std::string("a "), std::string("a\x7F")}) {
        EXPECT_FALSE(checkPerson(person("person:a", name)).has_value()) << name;
    }
    EXPECT_EQ(
        checkPerson(person("person:a", std::string(41, 'n'))).error().detail,
        "the name has 41 characters; allowed: 1 to 40");
}

TEST(Person, GetsAnIdOfItsOwn) {
    std::vector<Person> taken;
    for (const auto& [name, id] : std::vector<std::pair<std::string, std::string>>{
             {"Ines Falk", "person:ines-falk"},
             {"Ines  Falk", "person:ines-falk-2"},
             {"Ines Falk", "person:ines-falk-3"},
             {"\xC3\x84\xC3\x96", "person:p"},
             {std::string(40, 'x'), "person:" + std::string(30, 'x')}}) {
        EXPECT_EQ(newPersonId(name, taken), id);
        taken.push_back(person(id, name));
        EXPECT_TRUE(checkPerson(taken.back()).has_value()) << id;
    }
}

TEST(Person, TheLastForemanStaysOne) {
    std::vector<Person> people;
    ASSERT_TRUE(putPerson(people, person("person:a", "Ada", Role::Foreman)).has_value());
    ASSERT_TRUE(putPerson(people, person("person:b", "Ben")).has_value());
    EXPECT_TRUE(hasForeman(people));
    Person left = people[0];
    left.active = false;
    const auto refused = putPerson(people, left);
    ASSERT_FALSE(refused.has_value());
    EXPECT_EQ(refused.error().code, ErrorCode::Refused);
    EXPECT_EQ(
        refused.error().detail, "Ada is the last foreman; somebody else must become one first");
    EXPECT_FALSE(putPerson(people, person("person:a", "Ada", Role::Operator)).has_value());
    EXPECT_TRUE(people[0].active);
    ASSERT_TRUE(putPerson(people, person("person:b", "Ben", Role::Foreman)).has_value());
    EXPECT_TRUE(putPerson(people, left).has_value());
    EXPECT_EQ(people.size(), 2U);
    EXPECT_FALSE(findPerson(people, "person:a")->active);
    EXPECT_EQ(findPerson(people, "person:c"), nullptr);
}

TEST(Pin, HasDigitsOnlyAndTheRolesLength) {
    const auto length = [](const char* digits, Role role) {
        return checkLength(*Pin::read(digits), role).has_value();
    };
    EXPECT_TRUE(length("1234", Role::Operator));
    EXPECT_TRUE(length("123456789012", Role::Trainee));
    EXPECT_TRUE(length("123456", Role::Foreman));
    EXPECT_FALSE(length("123", Role::Operator));
    EXPECT_FALSE(length("12345", Role::Foreman));
    EXPECT_FALSE(Pin::read("1234567890123").has_value());
    EXPECT_FALSE(Pin::read("12a4").has_value());
    EXPECT_FALSE(Pin::read("").has_value());
    EXPECT_EQ(
        checkLength(*Pin::read("98765"), Role::Foreman).error().detail,
        "a foreman's PIN has 6 to 12 digits; this one has 5");
    EXPECT_EQ(
        Pin::read("12a4").error().detail,
        "a PIN has 1 to 12 digits and nothing else; this one has 4 characters");
}

} // namespace
} // namespace seamclock
