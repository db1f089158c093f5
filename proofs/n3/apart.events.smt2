; What the lemma takes for given, together with the opposite of what it claims. There is no such
; state: the lemma holds.
;
; Of 3 devices, any two of which may be linked. proofs/apart.md of cairn tells the lemma, with a
; proof by hand for every number of devices. Written by proofs/generate, from the formulas that
; cairn proves with.
(set-info :smt-lib-version 2.6)
(set-logic QF_UF)
(set-info :status unsat)
(declare-const |d1 is on this side| Bool)
(declare-const |d2 is on this side| Bool)
(declare-const |d3 is on this side| Bool)
(declare-const |power of d1 is off| Bool)
(declare-const |power of d1 is starting| Bool)
(declare-const |power of d1 is up| Bool)
(declare-const |power of d1 is held| Bool)
(declare-const |leader of d1 is none| Bool)
(declare-const |leader of d1 is d1| Bool)
(declare-const |leader of d1 is d2| Bool)
(declare-const |leader of d1 is d3| Bool)
(declare-const |number of d1 is 1| Bool)
(declare-const |number of d1 is 2| Bool)
(declare-const |number of d1 is 3| Bool)
(declare-const |next number of d1 is 1| Bool)
(declare-const |next number of d1 is 2| Bool)
(declare-const |next number of d1 is 3| Bool)
(declare-const |priority of d1 is 1| Bool)
(declare-const |priority of d1 is 2| Bool)
(declare-const |priority of d1 is 3| Bool)
(declare-const |startup priority of d1 is 1| Bool)
(declare-const |startup priority of d1 is 2| Bool)
(declare-const |startup priority of d1 is 3| Bool)
(declare-const |power of d2 is off| Bool)
(declare-const |power of d2 is starting| Bool)
(declare-const |power of d2 is up| Bool)
(declare-const |power of d2 is held| Bool)
(declare-const |leader of d2 is none| Bool)
(declare-const |leader of d2 is d1| Bool)
(declare-const |leader of d2 is d2| Bool)
(declare-const |leader of d2 is d3| Bool)
(declare-const |number of d2 is 1| Bool)
(declare-const |number of d2 is 2| Bool)
(declare-const |number of d2 is 3| Bool)
(declare-const |next number of d2 is 1| Bool)
(declare-const |next number of d2 is 2| Bool)
(declare-const |next number of d2 is 3| Bool)
(declare-const |priority of d2 is 1| Bool)
(declare-const |priority of d2 is 2| Bool)
(declare-const |priority of d2 is 3| Bool)
(declare-const |startup priority of d2 is 1| Bool)
(declare-const |startup priority of d2 is 2| Bool)
(declare-const |startup priority of d2 is 3| Bool)
(declare-const |power of d3 is off| Bool)
(declare-const |power of d3 is starting| Bool)
(declare-const |power of d3 is up| Bool)
(declare-const |power of d3 is held| Bool)
(declare-const |leader of d3 is none| Bool)
(declare-const |leader of d3 is d1| Bool)
(declare-const |leader of d3 is d2| Bool)
(declare-const |leader of d3 is d3| Bool)
(declare-const |number of d3 is 1| Bool)
(declare-const |number of d3 is 2| Bool)
(declare-const |number of d3 is 3| Bool)
(declare-const |next number of d3 is 1| Bool)
(declare-const |next number of d3 is 2| Bool)
(declare-const |next number of d3 is 3| Bool)
(declare-const |priority of d3 is 1| Bool)
(declare-const |priority of d3 is 2| Bool)
(declare-const |priority of d3 is 3| Bool)
(declare-const |startup priority of d3 is 1| Bool)
(declare-const |startup priority of d3 is 2| Bool)
(declare-const |startup priority of d3 is 3| Bool)
(declare-const |d1 senior to d2| Bool)
(declare-const |d1 senior to d3| Bool)
(declare-const |d2 senior to d1| Bool)
(declare-const |d2 senior to d3| Bool)
(declare-const |d3 senior to d1| Bool)
(declare-const |d3 senior to d2| Bool)
(declare-const |d1/2 enabled| Bool)
(declare-const |d1/2 enabled in startup| Bool)
(declare-const |side of d1/2 is none| Bool)
(declare-const |side of d1/2 is east| Bool)
(declare-const |side of d1/2 is west| Bool)
(declare-const |startup side of d1/2 is none| Bool)
(declare-const |startup side of d1/2 is east| Bool)
(declare-const |startup side of d1/2 is west| Bool)
(declare-const |operational side of d1/2 is none| Bool)
(declare-const |operational side of d1/2 is east| Bool)
(declare-const |operational side of d1/2 is west| Bool)
(declare-const |d1/3 enabled| Bool)
(declare-const |d1/3 enabled in startup| Bool)
(declare-const |side of d1/3 is none| Bool)
(declare-const |side of d1/3 is east| Bool)
(declare-const |side of d1/3 is west| Bool)
(declare-const |startup side of d1/3 is none| Bool)
(declare-const |startup side of d1/3 is east| Bool)
(declare-const |startup side of d1/3 is west| Bool)
(declare-const |operational side of d1/3 is none| Bool)
(declare-const |operational side of d1/3 is east| Bool)
(declare-const |operational side of d1/3 is west| Bool)
(declare-const |d2/1 enabled| Bool)
(declare-const |d2/1 enabled in startup| Bool)
(declare-const |side of d2/1 is none| Bool)
(declare-const |side of d2/1 is east| Bool)
(declare-const |side of d2/1 is west| Bool)
(declare-const |startup side of d2/1 is none| Bool)
(declare-const |startup side of d2/1 is east| Bool)
(declare-const |startup side of d2/1 is west| Bool)
(declare-const |operational side of d2/1 is none| Bool)
(declare-const |operational side of d2/1 is east| Bool)
(declare-const |operational side of d2/1 is west| Bool)
(declare-const |d2/3 enabled| Bool)
(declare-const |d2/3 enabled in startup| Bool)
(declare-const |side of d2/3 is none| Bool)
(declare-const |side of d2/3 is east| Bool)
(declare-const |side of d2/3 is west| Bool)
(declare-const |startup side of d2/3 is none| Bool)
(declare-const |startup side of d2/3 is east| Bool)
(declare-const |startup side of d2/3 is west| Bool)
(declare-const |operational side of d2/3 is none| Bool)
(declare-const |operational side of d2/3 is east| Bool)
(declare-const |operational side of d2/3 is west| Bool)
(declare-const |d3/1 enabled| Bool)
(declare-const |d3/1 enabled in startup| Bool)
(declare-const |side of d3/1 is none| Bool)
(declare-const |side of d3/1 is east| Bool)
(declare-const |side of d3/1 is west| Bool)
(declare-const |startup side of d3/1 is none| Bool)
(declare-const |startup side of d3/1 is east| Bool)
(declare-const |startup side of d3/1 is west| Bool)
(declare-const |operational side of d3/1 is none| Bool)
(declare-const |operational side of d3/1 is east| Bool)
(declare-const |operational side of d3/1 is west| Bool)
(declare-const |d3/2 enabled| Bool)
(declare-const |d3/2 enabled in startup| Bool)
(declare-const |side of d3/2 is none| Bool)
(declare-const |side of d3/2 is east| Bool)
(declare-const |side of d3/2 is west| Bool)
(declare-const |startup side of d3/2 is none| Bool)
(declare-const |startup side of d3/2 is east| Bool)
(declare-const |startup side of d3/2 is west| Bool)
(declare-const |operational side of d3/2 is none| Bool)
(declare-const |operational side of d3/2 is east| Bool)
(declare-const |operational side of d3/2 is west| Bool)
(declare-const |d1--d2 plugged| Bool)
(declare-const |d1--d2 broken| Bool)
(declare-const |d1--d3 plugged| Bool)
(declare-const |d1--d3 broken| Bool)
(declare-const |d2--d3 plugged| Bool)
(declare-const |d2--d3 broken| Bool)
(declare-const |rival plugged| Bool)
(declare-const |rival broken| Bool)
(declare-const |s1 done| Bool)
(declare-const |s2 done| Bool)
(declare-const |s3 done| Bool)
(declare-const |s4 done| Bool)
(declare-const |s5 done| Bool)
(declare-const |s6 done| Bool)
(declare-const |s7 done| Bool)
(declare-const |s8 done| Bool)
(declare-const |s9 done| Bool)
(declare-const |s10 done| Bool)
(declare-const |s11 done| Bool)
(declare-const |s12 done| Bool)
(declare-const |s13 done| Bool)
(declare-const |s14 done| Bool)
(declare-const |s15 done| Bool)
(declare-const |cable breaks left is 1| Bool)
(declare-const |crashes left is 1| Bool)
(declare-const |omissions left is 1| Bool)
(declare-const |late starts left is 1| Bool)
(declare-const |halted| Bool)
(declare-const |power of d1 is off'| Bool)
(declare-const |power of d1 is starting'| Bool)
(declare-const |power of d1 is up'| Bool)
(declare-const |power of d1 is held'| Bool)
(declare-const |leader of d1 is none'| Bool)
(declare-const |leader of d1 is d1'| Bool)
(declare-const |leader of d1 is d2'| Bool)
(declare-const |leader of d1 is d3'| Bool)
(declare-const |number of d1 is 1'| Bool)
(declare-const |number of d1 is 2'| Bool)
(declare-const |number of d1 is 3'| Bool)
(declare-const |next number of d1 is 1'| Bool)
(declare-const |next number of d1 is 2'| Bool)
(declare-const |next number of d1 is 3'| Bool)
(declare-const |priority of d1 is 1'| Bool)
(declare-const |priority of d1 is 2'| Bool)
(declare-const |priority of d1 is 3'| Bool)
(declare-const |startup priority of d1 is 1'| Bool)
(declare-const |startup priority of d1 is 2'| Bool)
(declare-const |startup priority of d1 is 3'| Bool)
(declare-const |power of d2 is off'| Bool)
(declare-const |power of d2 is starting'| Bool)
(declare-const |power of d2 is up'| Bool)
(declare-const |power of d2 is held'| Bool)
(declare-const |leader of d2 is none'| Bool)
(declare-const |leader of d2 is d1'| Bool)
(declare-const |leader of d2 is d2'| Bool)
(declare-const |leader of d2 is d3'| Bool)
(declare-const |number of d2 is 1'| Bool)
(declare-const |number of d2 is 2'| Bool)
(declare-const |number of d2 is 3'| Bool)
(declare-const |next number of d2 is 1'| Bool)
(declare-const |next number of d2 is 2'| Bool)
(declare-const |next number of d2 is 3'| Bool)
(declare-const |priority of d2 is 1'| Bool)
(declare-const |priority of d2 is 2'| Bool)
(declare-const |priority of d2 is 3'| Bool)
(declare-const |startup priority of d2 is 1'| Bool)
(declare-const |startup priority of d2 is 2'| Bool)
(declare-const |startup priority of d2 is 3'| Bool)
(declare-const |power of d3 is off'| Bool)
(declare-const |power of d3 is starting'| Bool)
(declare-const |power of d3 is up'| Bool)
(declare-const |power of d3 is held'| Bool)
(declare-const |leader of d3 is none'| Bool)
(declare-const |leader of d3 is d1'| Bool)
(declare-const |leader of d3 is d2'| Bool)
(declare-const |leader of d3 is d3'| Bool)
(declare-const |number of d3 is 1'| Bool)
(declare-const |number of d3 is 2'| Bool)
(declare-const |number of d3 is 3'| Bool)
(declare-const |next number of d3 is 1'| Bool)
(declare-const |next number of d3 is 2'| Bool)
(declare-const |next number of d3 is 3'| Bool)
(declare-const |priority of d3 is 1'| Bool)
(declare-const |priority of d3 is 2'| Bool)
(declare-const |priority of d3 is 3'| Bool)
(declare-const |startup priority of d3 is 1'| Bool)
(declare-const |startup priority of d3 is 2'| Bool)
(declare-const |startup priority of d3 is 3'| Bool)
(declare-const |d1 senior to d2'| Bool)
(declare-const |d1 senior to d3'| Bool)
(declare-const |d2 senior to d1'| Bool)
(declare-const |d2 senior to d3'| Bool)
(declare-const |d3 senior to d1'| Bool)
(declare-const |d3 senior to d2'| Bool)
(declare-const |d1/2 enabled'| Bool)
(declare-const |d1/2 enabled in startup'| Bool)
(declare-const |side of d1/2 is none'| Bool)
(declare-const |side of d1/2 is east'| Bool)
(declare-const |side of d1/2 is west'| Bool)
(declare-const |startup side of d1/2 is none'| Bool)
(declare-const |startup side of d1/2 is east'| Bool)
(declare-const |startup side of d1/2 is west'| Bool)
(declare-const |operational side of d1/2 is none'| Bool)
(declare-const |operational side of d1/2 is east'| Bool)
(declare-const |operational side of d1/2 is west'| Bool)
(declare-const |d1/3 enabled'| Bool)
(declare-const |d1/3 enabled in startup'| Bool)
(declare-const |side of d1/3 is none'| Bool)
(declare-const |side of d1/3 is east'| Bool)
(declare-const |side of d1/3 is west'| Bool)
(declare-const |startup side of d1/3 is none'| Bool)
(declare-const |startup side of d1/3 is east'| Bool)
(declare-const |startup side of d1/3 is west'| Bool)
(declare-const |operational side of d1/3 is none'| Bool)
(declare-const |operational side of d1/3 is east'| Bool)
(declare-const |operational side of d1/3 is west'| Bool)
(declare-const |d2/1 enabled'| Bool)
(declare-const |d2/1 enabled in startup'| Bool)
(declare-const |side of d2/1 is none'| Bool)
(declare-const |side of d2/1 is east'| Bool)
(declare-const |side of d2/1 is west'| Bool)
(declare-const |startup side of d2/1 is none'| Bool)
(declare-const |startup side of d2/1 is east'| Bool)
(declare-const |startup side of d2/1 is west'| Bool)
(declare-const |operational side of d2/1 is none'| Bool)
(declare-const |operational side of d2/1 is east'| Bool)
(declare-const |operational side of d2/1 is west'| Bool)
(declare-const |d2/3 enabled'| Bool)
(declare-const |d2/3 enabled in startup'| Bool)
(declare-const |side of d2/3 is none'| Bool)
(declare-const |side of d2/3 is east'| Bool)
(declare-const |side of d2/3 is west'| Bool)
(declare-const |startup side of d2/3 is none'| Bool)
(declare-const |startup side of d2/3 is east'| Bool)
(declare-const |startup side of d2/3 is west'| Bool)
(declare-const |operational side of d2/3 is none'| Bool)
(declare-const |operational side of d2/3 is east'| Bool)
(declare-const |operational side of d2/3 is west'| Bool)
(declare-const |d3/1 enabled'| Bool)
(declare-const |d3/1 enabled in startup'| Bool)
(declare-const |side of d3/1 is none'| Bool)
(declare-const |side of d3/1 is east'| Bool)
(declare-const |side of d3/1 is west'| Bool)
(declare-const |startup side of d3/1 is none'| Bool)
(declare-const |startup side of d3/1 is east'| Bool)
(declare-const |startup side of d3/1 is west'| Bool)
(declare-const |operational side of d3/1 is none'| Bool)
(declare-const |operational side of d3/1 is east'| Bool)
(declare-const |operational side of d3/1 is west'| Bool)
(declare-const |d3/2 enabled'| Bool)
(declare-const |d3/2 enabled in startup'| Bool)
(declare-const |side of d3/2 is none'| Bool)
(declare-const |side of d3/2 is east'| Bool)
(declare-const |side of d3/2 is west'| Bool)
(declare-const |startup side of d3/2 is none'| Bool)
(declare-const |startup side of d3/2 is east'| Bool)
(declare-const |startup side of d3/2 is west'| Bool)
(declare-const |operational side of d3/2 is none'| Bool)
(declare-const |operational side of d3/2 is east'| Bool)
(declare-const |operational side of d3/2 is west'| Bool)
(declare-const |d1--d2 plugged'| Bool)
(declare-const |d1--d2 broken'| Bool)
(declare-const |d1--d3 plugged'| Bool)
(declare-const |d1--d3 broken'| Bool)
(declare-const |d2--d3 plugged'| Bool)
(declare-const |d2--d3 broken'| Bool)
(declare-const |rival plugged'| Bool)
(declare-const |rival broken'| Bool)
(declare-const n1 Bool)
(assert (= n1 (and (not |power of d1 is off|) (not |power of d1 is starting|))))
(declare-const n2 Bool)
(assert (= n2 (and (or |power of d1 is off| |power of d1 is starting| |power of d1 is up|
    |power of d1 is held|) (or (not |power of d1 is off|) (not |power of d1 is starting|)) (or
    (not |power of d1 is up|) n1) (or (not |power of d1 is held|) (and (not |power of d1 is off|)
    (not |power of d1 is starting|) (not |power of d1 is up|))) (or |leader of d1 is none|
    |leader of d1 is d1| |leader of d1 is d2| |leader of d1 is d3|) (or (not |leader of d1 is none|)
    (not |leader of d1 is d1|)) (or (not |leader of d1 is d2|) (and (not |leader of d1 is none|)
    (not |leader of d1 is d1|))) (or (not |leader of d1 is d3|) (and (not |leader of d1 is none|)
    (not |leader of d1 is d1|) (not |leader of d1 is d2|))) (or |number of d1 is 1|
    |number of d1 is 2| |number of d1 is 3|) (or (not |number of d1 is 1|) (not |number of d1 is 2|))
    (or (not |number of d1 is 3|) (and (not |number of d1 is 1|) (not |number of d1 is 2|))) (or
    |next number of d1 is 1| |next number of d1 is 2| |next number of d1 is 3|) (or
    (not |next number of d1 is 1|) (not |next number of d1 is 2|)) (or
    (not |next number of d1 is 3|) (and (not |next number of d1 is 1|)
    (not |next number of d1 is 2|))) (or |priority of d1 is 1| |priority of d1 is 2|
    |priority of d1 is 3|) (or (not |priority of d1 is 1|) (not |priority of d1 is 2|)) (or
    (not |priority of d1 is 3|) (and (not |priority of d1 is 1|) (not |priority of d1 is 2|))) (or
    |startup priority of d1 is 1| |startup priority of d1 is 2| |startup priority of d1 is 3|) (or
    (not |startup priority of d1 is 1|) (not |startup priority of d1 is 2|)) (or
    (not |startup priority of d1 is 3|) (and (not |startup priority of d1 is 1|)
    (not |startup priority of d1 is 2|))) (or |power of d2 is off| |power of d2 is starting|
    |power of d2 is up| |power of d2 is held|) (or (not |power of d2 is off|)
    (not |power of d2 is starting|)) (or (not |power of d2 is up|) (and (not |power of d2 is off|)
    (not |power of d2 is starting|))) (or (not |power of d2 is held|) (and
    (not |power of d2 is off|) (not |power of d2 is starting|) (not |power of d2 is up|))))))
(declare-const n3 Bool)
(assert (= n3 (and n2 (or |leader of d2 is none| |leader of d2 is d1| |leader of d2 is d2|
    |leader of d2 is d3|) (or (not |leader of d2 is none|) (not |leader of d2 is d1|)) (or
    (not |leader of d2 is d2|) (and (not |leader of d2 is none|) (not |leader of d2 is d1|))) (or
    (not |leader of d2 is d3|) (and (not |leader of d2 is none|) (not |leader of d2 is d1|)
    (not |leader of d2 is d2|))) (or |number of d2 is 1| |number of d2 is 2| |number of d2 is 3|)
    (or (not |number of d2 is 1|) (not |number of d2 is 2|)) (or (not |number of d2 is 3|) (and
    (not |number of d2 is 1|) (not |number of d2 is 2|))) (or |next number of d2 is 1|
    |next number of d2 is 2| |next number of d2 is 3|) (or (not |next number of d2 is 1|)
    (not |next number of d2 is 2|)) (or (not |next number of d2 is 3|) (and
    (not |next number of d2 is 1|) (not |next number of d2 is 2|))) (or |priority of d2 is 1|
    |priority of d2 is 2| |priority of d2 is 3|) (or (not |priority of d2 is 1|)
    (not |priority of d2 is 2|)) (or (not |priority of d2 is 3|) (and (not |priority of d2 is 1|)
    (not |priority of d2 is 2|))) (or |startup priority of d2 is 1| |startup priority of d2 is 2|
    |startup priority of d2 is 3|) (or (not |startup priority of d2 is 1|)
    (not |startup priority of d2 is 2|)) (or (not |startup priority of d2 is 3|) (and
    (not |startup priority of d2 is 1|) (not |startup priority of d2 is 2|))) (or
    |power of d3 is off| |power of d3 is starting| |power of d3 is up| |power of d3 is held|) (or
    (not |power of d3 is off|) (not |power of d3 is starting|)) (or (not |power of d3 is up|) (and
    (not |power of d3 is off|) (not |power of d3 is starting|))) (or (not |power of d3 is held|)
    (and (not |power of d3 is off|) (not |power of d3 is starting|) (not |power of d3 is up|))))))
(declare-const n4 Bool)
(assert (= n4 (and n3 (or |leader of d3 is none| |leader of d3 is d1| |leader of d3 is d2|
    |leader of d3 is d3|) (or (not |leader of d3 is none|) (not |leader of d3 is d1|)) (or
    (not |leader of d3 is d2|) (and (not |leader of d3 is none|) (not |leader of d3 is d1|))) (or
    (not |leader of d3 is d3|) (and (not |leader of d3 is none|) (not |leader of d3 is d1|)
    (not |leader of d3 is d2|))) (or |number of d3 is 1| |number of d3 is 2| |number of d3 is 3|)
    (or (not |number of d3 is 1|) (not |number of d3 is 2|)) (or (not |number of d3 is 3|) (and
    (not |number of d3 is 1|) (not |number of d3 is 2|))) (or |next number of d3 is 1|
    |next number of d3 is 2| |next number of d3 is 3|) (or (not |next number of d3 is 1|)
    (not |next number of d3 is 2|)) (or (not |next number of d3 is 3|) (and
    (not |next number of d3 is 1|) (not |next number of d3 is 2|))) (or |priority of d3 is 1|
    |priority of d3 is 2| |priority of d3 is 3|) (or (not |priority of d3 is 1|)
    (not |priority of d3 is 2|)) (or (not |priority of d3 is 3|) (and (not |priority of d3 is 1|)
    (not |priority of d3 is 2|))) (or |startup priority of d3 is 1| |startup priority of d3 is 2|
    |startup priority of d3 is 3|) (or (not |startup priority of d3 is 1|)
    (not |startup priority of d3 is 2|)) (or (not |startup priority of d3 is 3|) (and
    (not |startup priority of d3 is 1|) (not |startup priority of d3 is 2|))) (or
    |side of d1/2 is none| |side of d1/2 is east| |side of d1/2 is west|) (or
    (not |side of d1/2 is none|) (not |side of d1/2 is east|)) (or (not |side of d1/2 is west|) (and
    (not |side of d1/2 is none|) (not |side of d1/2 is east|))) (or |startup side of d1/2 is none|
    |startup side of d1/2 is east| |startup side of d1/2 is west|) (or
    (not |startup side of d1/2 is none|) (not |startup side of d1/2 is east|)) (or
    (not |startup side of d1/2 is west|) (and (not |startup side of d1/2 is none|)
    (not |startup side of d1/2 is east|))))))
(declare-const n5 Bool)
(assert (= n5 (and n4 (or |operational side of d1/2 is none| |operational side of d1/2 is east|
    |operational side of d1/2 is west|) (or (not |operational side of d1/2 is none|)
    (not |operational side of d1/2 is east|)) (or (not |operational side of d1/2 is west|) (and
    (not |operational side of d1/2 is none|) (not |operational side of d1/2 is east|))) (or
    |side of d1/3 is none| |side of d1/3 is east| |side of d1/3 is west|) (or
    (not |side of d1/3 is none|) (not |side of d1/3 is east|)) (or (not |side of d1/3 is west|) (and
    (not |side of d1/3 is none|) (not |side of d1/3 is east|))) (or |startup side of d1/3 is none|
    |startup side of d1/3 is east| |startup side of d1/3 is west|) (or
    (not |startup side of d1/3 is none|) (not |startup side of d1/3 is east|)) (or
    (not |startup side of d1/3 is west|) (and (not |startup side of d1/3 is none|)
    (not |startup side of d1/3 is east|))) (or |operational side of d1/3 is none|
    |operational side of d1/3 is east| |operational side of d1/3 is west|) (or
    (not |operational side of d1/3 is none|) (not |operational side of d1/3 is east|)) (or
    (not |operational side of d1/3 is west|) (and (not |operational side of d1/3 is none|)
    (not |operational side of d1/3 is east|))) (or |side of d2/1 is none| |side of d2/1 is east|
    |side of d2/1 is west|) (or (not |side of d2/1 is none|) (not |side of d2/1 is east|)) (or
    (not |side of d2/1 is west|) (and (not |side of d2/1 is none|) (not |side of d2/1 is east|)))
    (or |startup side of d2/1 is none| |startup side of d2/1 is east| |startup side of d2/1 is west|)
    (or (not |startup side of d2/1 is none|) (not |startup side of d2/1 is east|)) (or
    (not |startup side of d2/1 is west|) (and (not |startup side of d2/1 is none|)
    (not |startup side of d2/1 is east|))) (or |operational side of d2/1 is none|
    |operational side of d2/1 is east| |operational side of d2/1 is west|) (or
    (not |operational side of d2/1 is none|) (not |operational side of d2/1 is east|)) (or
    (not |operational side of d2/1 is west|) (and (not |operational side of d2/1 is none|)
    (not |operational side of d2/1 is east|))) (or |side of d2/3 is none| |side of d2/3 is east|
    |side of d2/3 is west|) (or (not |side of d2/3 is none|) (not |side of d2/3 is east|)) (or
    (not |side of d2/3 is west|) (and (not |side of d2/3 is none|) (not |side of d2/3 is east|))))))
(declare-const n6 Bool)
(assert (= n6 (and n5 (or |startup side of d2/3 is none| |startup side of d2/3 is east|
    |startup side of d2/3 is west|) (or (not |startup side of d2/3 is none|)
    (not |startup side of d2/3 is east|)) (or (not |startup side of d2/3 is west|) (and
    (not |startup side of d2/3 is none|) (not |startup side of d2/3 is east|))) (or
    |operational side of d2/3 is none| |operational side of d2/3 is east|
    |operational side of d2/3 is west|) (or (not |operational side of d2/3 is none|)
    (not |operational side of d2/3 is east|)) (or (not |operational side of d2/3 is west|) (and
    (not |operational side of d2/3 is none|) (not |operational side of d2/3 is east|))) (or
    |side of d3/1 is none| |side of d3/1 is east| |side of d3/1 is west|) (or
    (not |side of d3/1 is none|) (not |side of d3/1 is east|)) (or (not |side of d3/1 is west|) (and
    (not |side of d3/1 is none|) (not |side of d3/1 is east|))) (or |startup side of d3/1 is none|
    |startup side of d3/1 is east| |startup side of d3/1 is west|) (or
    (not |startup side of d3/1 is none|) (not |startup side of d3/1 is east|)) (or
    (not |startup side of d3/1 is west|) (and (not |startup side of d3/1 is none|)
    (not |startup side of d3/1 is east|))) (or |operational side of d3/1 is none|
    |operational side of d3/1 is east| |operational side of d3/1 is west|) (or
    (not |operational side of d3/1 is none|) (not |operational side of d3/1 is east|)) (or
    (not |operational side of d3/1 is west|) (and (not |operational side of d3/1 is none|)
    (not |operational side of d3/1 is east|))) (or |side of d3/2 is none| |side of d3/2 is east|
    |side of d3/2 is west|) (or (not |side of d3/2 is none|) (not |side of d3/2 is east|)) (or
    (not |side of d3/2 is west|) (and (not |side of d3/2 is none|) (not |side of d3/2 is east|)))
    (or |startup side of d3/2 is none| |startup side of d3/2 is east| |startup side of d3/2 is west|)
    (or (not |startup side of d3/2 is none|) (not |startup side of d3/2 is east|)) (or
    (not |startup side of d3/2 is west|) (and (not |startup side of d3/2 is none|)
    (not |startup side of d3/2 is east|))) (or |operational side of d3/2 is none|
    |operational side of d3/2 is east| |operational side of d3/2 is west|) (or
    (not |operational side of d3/2 is none|) (not |operational side of d3/2 is east|)) (or
    (not |operational side of d3/2 is west|) (and (not |operational side of d3/2 is none|)
    (not |operational side of d3/2 is east|))))))
(declare-const n7 Bool)
(assert (= n7 (and (or |power of d1 is off'| |power of d1 is starting'| |power of d1 is up'|
    |power of d1 is held'|) (or (not |power of d1 is off'|) (not |power of d1 is starting'|)) (or
    (not |power of d1 is up'|) (and (not |power of d1 is off'|) (not |power of d1 is starting'|)))
    (or (not |power of d1 is held'|) (and (not |power of d1 is off'|)
    (not |power of d1 is starting'|) (not |power of d1 is up'|))) (or |leader of d1 is none'|
    |leader of d1 is d1'| |leader of d1 is d2'| |leader of d1 is d3'|) (or
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|)) (or (not |leader of d1 is d2'|) (and
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|))) (or (not |leader of d1 is d3'|) (and
    (not |leader of d1 is none'|) (not |leader of d1 is d1'|) (not |leader of d1 is d2'|))) (or
    |number of d1 is 1'| |number of d1 is 2'| |number of d1 is 3'|) (or (not |number of d1 is 1'|)
    (not |number of d1 is 2'|)) (or (not |number of d1 is 3'|) (and (not |number of d1 is 1'|)
    (not |number of d1 is 2'|))) (or |next number of d1 is 1'| |next number of d1 is 2'|
    |next number of d1 is 3'|) (or (not |next number of d1 is 1'|) (not |next number of d1 is 2'|))
    (or (not |next number of d1 is 3'|) (and (not |next number of d1 is 1'|)
    (not |next number of d1 is 2'|))) (or |priority of d1 is 1'| |priority of d1 is 2'|
    |priority of d1 is 3'|) (or (not |priority of d1 is 1'|) (not |priority of d1 is 2'|)) (or
    (not |priority of d1 is 3'|) (and (not |priority of d1 is 1'|) (not |priority of d1 is 2'|)))
    (or |startup priority of d1 is 1'| |startup priority of d1 is 2'| |startup priority of d1 is 3'|)
    (or (not |startup priority of d1 is 1'|) (not |startup priority of d1 is 2'|)) (or
    (not |startup priority of d1 is 3'|) (and (not |startup priority of d1 is 1'|)
    (not |startup priority of d1 is 2'|))) (or |power of d2 is off'| |power of d2 is starting'|
    |power of d2 is up'| |power of d2 is held'|) (or (not |power of d2 is off'|)
    (not |power of d2 is starting'|)) (or (not |power of d2 is up'|) (and
    (not |power of d2 is off'|) (not |power of d2 is starting'|))) (or (not |power of d2 is held'|)
    (and (not |power of d2 is off'|) (not |power of d2 is starting'|) (not |power of d2 is up'|))))))
(declare-const n8 Bool)
(assert (= n8 (and n7 (or |leader of d2 is none'| |leader of d2 is d1'| |leader of d2 is d2'|
    |leader of d2 is d3'|) (or (not |leader of d2 is none'|) (not |leader of d2 is d1'|)) (or
    (not |leader of d2 is d2'|) (and (not |leader of d2 is none'|) (not |leader of d2 is d1'|))) (or
    (not |leader of d2 is d3'|) (and (not |leader of d2 is none'|) (not |leader of d2 is d1'|)
    (not |leader of d2 is d2'|))) (or |number of d2 is 1'| |number of d2 is 2'| |number of d2 is 3'|)
    (or (not |number of d2 is 1'|) (not |number of d2 is 2'|)) (or (not |number of d2 is 3'|) (and
    (not |number of d2 is 1'|) (not |number of d2 is 2'|))) (or |next number of d2 is 1'|
    |next number of d2 is 2'| |next number of d2 is 3'|) (or (not |next number of d2 is 1'|)
    (not |next number of d2 is 2'|)) (or (not |next number of d2 is 3'|) (and
    (not |next number of d2 is 1'|) (not |next number of d2 is 2'|))) (or |priority of d2 is 1'|
    |priority of d2 is 2'| |priority of d2 is 3'|) (or (not |priority of d2 is 1'|)
    (not |priority of d2 is 2'|)) (or (not |priority of d2 is 3'|) (and (not |priority of d2 is 1'|)
    (not |priority of d2 is 2'|))) (or |startup priority of d2 is 1'| |startup priority of d2 is 2'|
    |startup priority of d2 is 3'|) (or (not |startup priority of d2 is 1'|)
    (not |startup priority of d2 is 2'|)) (or (not |startup priority of d2 is 3'|) (and
    (not |startup priority of d2 is 1'|) (not |startup priority of d2 is 2'|))) (or
    |power of d3 is off'| |power of d3 is starting'| |power of d3 is up'| |power of d3 is held'|)
    (or (not |power of d3 is off'|) (not |power of d3 is starting'|)) (or (not |power of d3 is up'|)
    (and (not |power of d3 is off'|) (not |power of d3 is starting'|))) (or
    (not |power of d3 is held'|) (and (not |power of d3 is off'|) (not |power of d3 is starting'|)
    (not |power of d3 is up'|))))))
(declare-const n9 Bool)
(assert (= n9 (and n8 (or |leader of d3 is none'| |leader of d3 is d1'| |leader of d3 is d2'|
    |leader of d3 is d3'|) (or (not |leader of d3 is none'|) (not |leader of d3 is d1'|)) (or
    (not |leader of d3 is d2'|) (and (not |leader of d3 is none'|) (not |leader of d3 is d1'|))) (or
    (not |leader of d3 is d3'|) (and (not |leader of d3 is none'|) (not |leader of d3 is d1'|)
    (not |leader of d3 is d2'|))) (or |number of d3 is 1'| |number of d3 is 2'| |number of d3 is 3'|)
    (or (not |number of d3 is 1'|) (not |number of d3 is 2'|)) (or (not |number of d3 is 3'|) (and
    (not |number of d3 is 1'|) (not |number of d3 is 2'|))) (or |next number of d3 is 1'|
    |next number of d3 is 2'| |next number of d3 is 3'|) (or (not |next number of d3 is 1'|)
    (not |next number of d3 is 2'|)) (or (not |next number of d3 is 3'|) (and
    (not |next number of d3 is 1'|) (not |next number of d3 is 2'|))) (or |priority of d3 is 1'|
    |priority of d3 is 2'| |priority of d3 is 3'|) (or (not |priority of d3 is 1'|)
    (not |priority of d3 is 2'|)) (or (not |priority of d3 is 3'|) (and (not |priority of d3 is 1'|)
    (not |priority of d3 is 2'|))) (or |startup priority of d3 is 1'| |startup priority of d3 is 2'|
    |startup priority of d3 is 3'|) (or (not |startup priority of d3 is 1'|)
    (not |startup priority of d3 is 2'|)) (or (not |startup priority of d3 is 3'|) (and
    (not |startup priority of d3 is 1'|) (not |startup priority of d3 is 2'|))) (or
    |side of d1/2 is none'| |side of d1/2 is east'| |side of d1/2 is west'|) (or
    (not |side of d1/2 is none'|) (not |side of d1/2 is east'|)) (or (not |side of d1/2 is west'|)
    (and (not |side of d1/2 is none'|) (not |side of d1/2 is east'|))) (or
    |startup side of d1/2 is none'| |startup side of d1/2 is east'| |startup side of d1/2 is west'|)
    (or (not |startup side of d1/2 is none'|) (not |startup side of d1/2 is east'|)) (or
    (not |startup side of d1/2 is west'|) (and (not |startup side of d1/2 is none'|)
    (not |startup side of d1/2 is east'|))))))
(declare-const n10 Bool)
(assert (= n10 (and n9 (or |operational side of d1/2 is none'| |operational side of d1/2 is east'|
    |operational side of d1/2 is west'|) (or (not |operational side of d1/2 is none'|)
    (not |operational side of d1/2 is east'|)) (or (not |operational side of d1/2 is west'|) (and
    (not |operational side of d1/2 is none'|) (not |operational side of d1/2 is east'|))) (or
    |side of d1/3 is none'| |side of d1/3 is east'| |side of d1/3 is west'|) (or
    (not |side of d1/3 is none'|) (not |side of d1/3 is east'|)) (or (not |side of d1/3 is west'|)
    (and (not |side of d1/3 is none'|) (not |side of d1/3 is east'|))) (or
    |startup side of d1/3 is none'| |startup side of d1/3 is east'| |startup side of d1/3 is west'|)
    (or (not |startup side of d1/3 is none'|) (not |startup side of d1/3 is east'|)) (or
    (not |startup side of d1/3 is west'|) (and (not |startup side of d1/3 is none'|)
    (not |startup side of d1/3 is east'|))) (or |operational side of d1/3 is none'|
    |operational side of d1/3 is east'| |operational side of d1/3 is west'|) (or
    (not |operational side of d1/3 is none'|) (not |operational side of d1/3 is east'|)) (or
    (not |operational side of d1/3 is west'|) (and (not |operational side of d1/3 is none'|)
    (not |operational side of d1/3 is east'|))) (or |side of d2/1 is none'| |side of d2/1 is east'|
    |side of d2/1 is west'|) (or (not |side of d2/1 is none'|) (not |side of d2/1 is east'|)) (or
    (not |side of d2/1 is west'|) (and (not |side of d2/1 is none'|) (not |side of d2/1 is east'|)))
    (or |startup side of d2/1 is none'| |startup side of d2/1 is east'|
    |startup side of d2/1 is west'|) (or (not |startup side of d2/1 is none'|)
    (not |startup side of d2/1 is east'|)) (or (not |startup side of d2/1 is west'|) (and
    (not |startup side of d2/1 is none'|) (not |startup side of d2/1 is east'|))) (or
    |operational side of d2/1 is none'| |operational side of d2/1 is east'|
    |operational side of d2/1 is west'|) (or (not |operational side of d2/1 is none'|)
    (not |operational side of d2/1 is east'|)) (or (not |operational side of d2/1 is west'|) (and
    (not |operational side of d2/1 is none'|) (not |operational side of d2/1 is east'|))) (or
    |side of d2/3 is none'| |side of d2/3 is east'| |side of d2/3 is west'|) (or
    (not |side of d2/3 is none'|) (not |side of d2/3 is east'|)) (or (not |side of d2/3 is west'|)
    (and (not |side of d2/3 is none'|) (not |side of d2/3 is east'|))))))
(declare-const n11 Bool)
(assert (= n11 (and n10 (or |startup side of d2/3 is none'| |startup side of d2/3 is east'|
    |startup side of d2/3 is west'|) (or (not |startup side of d2/3 is none'|)
    (not |startup side of d2/3 is east'|)) (or (not |startup side of d2/3 is west'|) (and
    (not |startup side of d2/3 is none'|) (not |startup side of d2/3 is east'|))) (or
    |operational side of d2/3 is none'| |operational side of d2/3 is east'|
    |operational side of d2/3 is west'|) (or (not |operational side of d2/3 is none'|)
    (not |operational side of d2/3 is east'|)) (or (not |operational side of d2/3 is west'|) (and
    (not |operational side of d2/3 is none'|) (not |operational side of d2/3 is east'|))) (or
    |side of d3/1 is none'| |side of d3/1 is east'| |side of d3/1 is west'|) (or
    (not |side of d3/1 is none'|) (not |side of d3/1 is east'|)) (or (not |side of d3/1 is west'|)
    (and (not |side of d3/1 is none'|) (not |side of d3/1 is east'|))) (or
    |startup side of d3/1 is none'| |startup side of d3/1 is east'| |startup side of d3/1 is west'|)
    (or (not |startup side of d3/1 is none'|) (not |startup side of d3/1 is east'|)) (or
    (not |startup side of d3/1 is west'|) (and (not |startup side of d3/1 is none'|)
    (not |startup side of d3/1 is east'|))) (or |operational side of d3/1 is none'|
    |operational side of d3/1 is east'| |operational side of d3/1 is west'|) (or
    (not |operational side of d3/1 is none'|) (not |operational side of d3/1 is east'|)) (or
    (not |operational side of d3/1 is west'|) (and (not |operational side of d3/1 is none'|)
    (not |operational side of d3/1 is east'|))) (or |side of d3/2 is none'| |side of d3/2 is east'|
    |side of d3/2 is west'|) (or (not |side of d3/2 is none'|) (not |side of d3/2 is east'|)) (or
    (not |side of d3/2 is west'|) (and (not |side of d3/2 is none'|) (not |side of d3/2 is east'|)))
    (or |startup side of d3/2 is none'| |startup side of d3/2 is east'|
    |startup side of d3/2 is west'|) (or (not |startup side of d3/2 is none'|)
    (not |startup side of d3/2 is east'|)) (or (not |startup side of d3/2 is west'|) (and
    (not |startup side of d3/2 is none'|) (not |startup side of d3/2 is east'|))) (or
    |operational side of d3/2 is none'| |operational side of d3/2 is east'|
    |operational side of d3/2 is west'|) (or (not |operational side of d3/2 is none'|)
    (not |operational side of d3/2 is east'|)) (or (not |operational side of d3/2 is west'|) (and
    (not |operational side of d3/2 is none'|) (not |operational side of d3/2 is east'|))))))
(declare-const n12 Bool)
(assert (= n12 (ite |d1 is on this side| |power of d1 is off| |power of d1 is off'|)))
(declare-const n13 Bool)
(assert (= n13 (ite |d1 is on this side| |power of d1 is starting| |power of d1 is starting'|)))
(declare-const n14 Bool)
(assert (= n14 (ite |d1 is on this side| |power of d1 is up| |power of d1 is up'|)))
(declare-const n15 Bool)
(assert (= n15 (ite |d1 is on this side| |power of d1 is held| |power of d1 is held'|)))
(declare-const n16 Bool)
(assert (= n16 (ite |d1 is on this side| |leader of d1 is none| |leader of d1 is none'|)))
(declare-const n17 Bool)
(assert (= n17 (ite |d1 is on this side| |leader of d1 is d1| |leader of d1 is d1'|)))
(declare-const n18 Bool)
(assert (= n18 (ite |d1 is on this side| |leader of d1 is d2| |leader of d1 is d2'|)))
(declare-const n19 Bool)
(assert (= n19 (ite |d1 is on this side| |leader of d1 is d3| |leader of d1 is d3'|)))
(declare-const n20 Bool)
(assert (= n20 (ite |d1 is on this side| |number of d1 is 1| |number of d1 is 1'|)))
(declare-const n21 Bool)
(assert (= n21 (ite |d1 is on this side| |number of d1 is 2| |number of d1 is 2'|)))
(declare-const n22 Bool)
(assert (= n22 (ite |d1 is on this side| |number of d1 is 3| |number of d1 is 3'|)))
(declare-const n23 Bool)
(assert (= n23 (ite |d1 is on this side| |next number of d1 is 1| |next number of d1 is 1'|)))
(declare-const n24 Bool)
(assert (= n24 (ite |d1 is on this side| |next number of d1 is 2| |next number of d1 is 2'|)))
(declare-const n25 Bool)
(assert (= n25 (ite |d1 is on this side| |next number of d1 is 3| |next number of d1 is 3'|)))
(declare-const n26 Bool)
(assert (= n26 (ite |d1 is on this side| |priority of d1 is 1| |priority of d1 is 1'|)))
(declare-const n27 Bool)
(assert (= n27 (ite |d1 is on this side| |priority of d1 is 2| |priority of d1 is 2'|)))
(declare-const n28 Bool)
(assert (= n28 (ite |d1 is on this side| |priority of d1 is 3| |priority of d1 is 3'|)))
(declare-const n29 Bool)
(assert (= n29 (ite |d1 is on this side| |startup priority of d1 is 1|
    |startup priority of d1 is 1'|)))
(declare-const n30 Bool)
(assert (= n30 (ite |d1 is on this side| |startup priority of d1 is 2|
    |startup priority of d1 is 2'|)))
(declare-const n31 Bool)
(assert (= n31 (ite |d1 is on this side| |startup priority of d1 is 3|
    |startup priority of d1 is 3'|)))
(declare-const n32 Bool)
(assert (= n32 (ite |d2 is on this side| |power of d2 is starting| |power of d2 is starting'|)))
(declare-const n33 Bool)
(assert (= n33 (ite |d2 is on this side| |power of d2 is up| |power of d2 is up'|)))
(declare-const n34 Bool)
(assert (= n34 (ite |d2 is on this side| |power of d2 is held| |power of d2 is held'|)))
(declare-const n35 Bool)
(assert (= n35 (ite |d2 is on this side| |leader of d2 is none| |leader of d2 is none'|)))
(declare-const n36 Bool)
(assert (= n36 (ite |d2 is on this side| |priority of d2 is 1| |priority of d2 is 1'|)))
(declare-const n37 Bool)
(assert (= n37 (ite |d2 is on this side| |priority of d2 is 2| |priority of d2 is 2'|)))
(declare-const n38 Bool)
(assert (= n38 (ite |d2 is on this side| |priority of d2 is 3| |priority of d2 is 3'|)))
(declare-const n39 Bool)
(assert (= n39 (ite |d2 is on this side| |startup priority of d2 is 1|
    |startup priority of d2 is 1'|)))
(declare-const n40 Bool)
(assert (= n40 (ite |d2 is on this side| |startup priority of d2 is 2|
    |startup priority of d2 is 2'|)))
(declare-const n41 Bool)
(assert (= n41 (ite |d2 is on this side| |startup priority of d2 is 3|
    |startup priority of d2 is 3'|)))
(declare-const n42 Bool)
(assert (= n42 (ite |d3 is on this side| |power of d3 is starting| |power of d3 is starting'|)))
(declare-const n43 Bool)
(assert (= n43 (ite |d3 is on this side| |power of d3 is up| |power of d3 is up'|)))
(declare-const n44 Bool)
(assert (= n44 (ite |d3 is on this side| |power of d3 is held| |power of d3 is held'|)))
(declare-const n45 Bool)
(assert (= n45 (ite |d3 is on this side| |leader of d3 is none| |leader of d3 is none'|)))
(declare-const n46 Bool)
(assert (= n46 (ite |d3 is on this side| |priority of d3 is 1| |priority of d3 is 1'|)))
(declare-const n47 Bool)
(assert (= n47 (ite |d3 is on this side| |priority of d3 is 2| |priority of d3 is 2'|)))
(declare-const n48 Bool)
(assert (= n48 (ite |d3 is on this side| |priority of d3 is 3| |priority of d3 is 3'|)))
(declare-const n49 Bool)
(assert (= n49 (ite |d3 is on this side| |startup priority of d3 is 1|
    |startup priority of d3 is 1'|)))
(declare-const n50 Bool)
(assert (= n50 (ite |d3 is on this side| |startup priority of d3 is 2|
    |startup priority of d3 is 2'|)))
(declare-const n51 Bool)
(assert (= n51 (ite |d3 is on this side| |startup priority of d3 is 3|
    |startup priority of d3 is 3'|)))
(declare-const n52 Bool)
(assert (= n52 (and |d1 is on this side| |d2 is on this side|)))
(declare-const n53 Bool)
(assert (= n53 (ite n52 |d1 senior to d2| |d1 senior to d2'|)))
(declare-const n54 Bool)
(assert (= n54 (and |d1 is on this side| |d3 is on this side|)))
(declare-const n55 Bool)
(assert (= n55 (ite n54 |d1 senior to d3| |d1 senior to d3'|)))
(declare-const n56 Bool)
(assert (= n56 (ite n52 |d2 senior to d1| |d2 senior to d1'|)))
(declare-const n57 Bool)
(assert (= n57 (and |d2 is on this side| |d3 is on this side|)))
(declare-const n58 Bool)
(assert (= n58 (ite n57 |d2 senior to d3| |d2 senior to d3'|)))
(declare-const n59 Bool)
(assert (= n59 (ite n54 |d3 senior to d1| |d3 senior to d1'|)))
(declare-const n60 Bool)
(assert (= n60 (ite n57 |d3 senior to d2| |d3 senior to d2'|)))
(declare-const n61 Bool)
(assert (= n61 (ite |d1 is on this side| |d1/2 enabled| |d1/2 enabled'|)))
(declare-const n62 Bool)
(assert (= n62 (ite |d1 is on this side| |d1/2 enabled in startup| |d1/2 enabled in startup'|)))
(declare-const n63 Bool)
(assert (= n63 (ite |d1 is on this side| |side of d1/2 is none| |side of d1/2 is none'|)))
(declare-const n64 Bool)
(assert (= n64 (ite |d1 is on this side| |side of d1/2 is east| |side of d1/2 is east'|)))
(declare-const n65 Bool)
(assert (= n65 (ite |d1 is on this side| |side of d1/2 is west| |side of d1/2 is west'|)))
(declare-const n66 Bool)
(assert (= n66 (ite |d1 is on this side| |startup side of d1/2 is none|
    |startup side of d1/2 is none'|)))
(declare-const n67 Bool)
(assert (= n67 (ite |d1 is on this side| |startup side of d1/2 is east|
    |startup side of d1/2 is east'|)))
(declare-const n68 Bool)
(assert (= n68 (ite |d1 is on this side| |startup side of d1/2 is west|
    |startup side of d1/2 is west'|)))
(declare-const n69 Bool)
(assert (= n69 (ite |d1 is on this side| |operational side of d1/2 is none|
    |operational side of d1/2 is none'|)))
(declare-const n70 Bool)
(assert (= n70 (ite |d1 is on this side| |operational side of d1/2 is east|
    |operational side of d1/2 is east'|)))
(declare-const n71 Bool)
(assert (= n71 (ite |d1 is on this side| |operational side of d1/2 is west|
    |operational side of d1/2 is west'|)))
(declare-const n72 Bool)
(assert (= n72 (ite |d1 is on this side| |d1/3 enabled| |d1/3 enabled'|)))
(declare-const n73 Bool)
(assert (= n73 (ite |d1 is on this side| |d1/3 enabled in startup| |d1/3 enabled in startup'|)))
(declare-const n74 Bool)
(assert (= n74 (ite |d1 is on this side| |side of d1/3 is none| |side of d1/3 is none'|)))
(declare-const n75 Bool)
(assert (= n75 (ite |d1 is on this side| |side of d1/3 is east| |side of d1/3 is east'|)))
(declare-const n76 Bool)
(assert (= n76 (ite |d1 is on this side| |side of d1/3 is west| |side of d1/3 is west'|)))
(declare-const n77 Bool)
(assert (= n77 (ite |d1 is on this side| |startup side of d1/3 is none|
    |startup side of d1/3 is none'|)))
(declare-const n78 Bool)
(assert (= n78 (ite |d1 is on this side| |startup side of d1/3 is east|
    |startup side of d1/3 is east'|)))
(declare-const n79 Bool)
(assert (= n79 (ite |d1 is on this side| |startup side of d1/3 is west|
    |startup side of d1/3 is west'|)))
(declare-const n80 Bool)
(assert (= n80 (ite |d1 is on this side| |operational side of d1/3 is none|
    |operational side of d1/3 is none'|)))
(declare-const n81 Bool)
(assert (= n81 (ite |d1 is on this side| |operational side of d1/3 is east|
    |operational side of d1/3 is east'|)))
(declare-const n82 Bool)
(assert (= n82 (ite |d1 is on this side| |operational side of d1/3 is west|
    |operational side of d1/3 is west'|)))
(declare-const n83 Bool)
(assert (= n83 (ite |d2 is on this side| |d2/1 enabled| |d2/1 enabled'|)))
(declare-const n84 Bool)
(assert (= n84 (ite |d2 is on this side| |d2/1 enabled in startup| |d2/1 enabled in startup'|)))
(declare-const n85 Bool)
(assert (= n85 (ite |d2 is on this side| |side of d2/1 is none| |side of d2/1 is none'|)))
(declare-const n86 Bool)
(assert (= n86 (ite |d2 is on this side| |side of d2/1 is east| |side of d2/1 is east'|)))
(declare-const n87 Bool)
(assert (= n87 (ite |d2 is on this side| |side of d2/1 is west| |side of d2/1 is west'|)))
(declare-const n88 Bool)
(assert (= n88 (ite |d2 is on this side| |startup side of d2/1 is none|
    |startup side of d2/1 is none'|)))
(declare-const n89 Bool)
(assert (= n89 (ite |d2 is on this side| |startup side of d2/1 is east|
    |startup side of d2/1 is east'|)))
(declare-const n90 Bool)
(assert (= n90 (ite |d2 is on this side| |startup side of d2/1 is west|
    |startup side of d2/1 is west'|)))
(declare-const n91 Bool)
(assert (= n91 (ite |d2 is on this side| |operational side of d2/1 is none|
    |operational side of d2/1 is none'|)))
(declare-const n92 Bool)
(assert (= n92 (ite |d2 is on this side| |operational side of d2/1 is east|
    |operational side of d2/1 is east'|)))
(declare-const n93 Bool)
(assert (= n93 (ite |d2 is on this side| |operational side of d2/1 is west|
    |operational side of d2/1 is west'|)))
(declare-const n94 Bool)
(assert (= n94 (ite |d2 is on this side| |d2/3 enabled| |d2/3 enabled'|)))
(declare-const n95 Bool)
(assert (= n95 (ite |d2 is on this side| |d2/3 enabled in startup| |d2/3 enabled in startup'|)))
(declare-const n96 Bool)
(assert (= n96 (ite |d2 is on this side| |side of d2/3 is none| |side of d2/3 is none'|)))
(declare-const n97 Bool)
(assert (= n97 (ite |d2 is on this side| |side of d2/3 is east| |side of d2/3 is east'|)))
(declare-const n98 Bool)
(assert (= n98 (ite |d2 is on this side| |side of d2/3 is west| |side of d2/3 is west'|)))
(declare-const n99 Bool)
(assert (= n99 (ite |d2 is on this side| |startup side of d2/3 is none|
    |startup side of d2/3 is none'|)))
(declare-const n100 Bool)
(assert (= n100 (ite |d2 is on this side| |startup side of d2/3 is east|
    |startup side of d2/3 is east'|)))
(declare-const n101 Bool)
(assert (= n101 (ite |d2 is on this side| |startup side of d2/3 is west|
    |startup side of d2/3 is west'|)))
(declare-const n102 Bool)
(assert (= n102 (ite |d2 is on this side| |operational side of d2/3 is none|
    |operational side of d2/3 is none'|)))
(declare-const n103 Bool)
(assert (= n103 (ite |d2 is on this side| |operational side of d2/3 is east|
    |operational side of d2/3 is east'|)))
(declare-const n104 Bool)
(assert (= n104 (ite |d2 is on this side| |operational side of d2/3 is west|
    |operational side of d2/3 is west'|)))
(declare-const n105 Bool)
(assert (= n105 (ite |d3 is on this side| |d3/1 enabled| |d3/1 enabled'|)))
(declare-const n106 Bool)
(assert (= n106 (ite |d3 is on this side| |d3/1 enabled in startup| |d3/1 enabled in startup'|)))
(declare-const n107 Bool)
(assert (= n107 (ite |d3 is on this side| |side of d3/1 is none| |side of d3/1 is none'|)))
(declare-const n108 Bool)
(assert (= n108 (ite |d3 is on this side| |side of d3/1 is east| |side of d3/1 is east'|)))
(declare-const n109 Bool)
(assert (= n109 (ite |d3 is on this side| |side of d3/1 is west| |side of d3/1 is west'|)))
(declare-const n110 Bool)
(assert (= n110 (ite |d3 is on this side| |startup side of d3/1 is none|
    |startup side of d3/1 is none'|)))
(declare-const n111 Bool)
(assert (= n111 (ite |d3 is on this side| |startup side of d3/1 is east|
    |startup side of d3/1 is east'|)))
(declare-const n112 Bool)
(assert (= n112 (ite |d3 is on this side| |startup side of d3/1 is west|
    |startup side of d3/1 is west'|)))
(declare-const n113 Bool)
(assert (= n113 (ite |d3 is on this side| |operational side of d3/1 is none|
    |operational side of d3/1 is none'|)))
(declare-const n114 Bool)
(assert (= n114 (ite |d3 is on this side| |operational side of d3/1 is east|
    |operational side of d3/1 is east'|)))
(declare-const n115 Bool)
(assert (= n115 (ite |d3 is on this side| |operational side of d3/1 is west|
    |operational side of d3/1 is west'|)))
(declare-const n116 Bool)
(assert (= n116 (ite |d3 is on this side| |d3/2 enabled| |d3/2 enabled'|)))
(declare-const n117 Bool)
(assert (= n117 (ite |d3 is on this side| |d3/2 enabled in startup| |d3/2 enabled in startup'|)))
(declare-const n118 Bool)
(assert (= n118 (ite |d3 is on this side| |side of d3/2 is none| |side of d3/2 is none'|)))
(declare-const n119 Bool)
(assert (= n119 (ite |d3 is on this side| |side of d3/2 is east| |side of d3/2 is east'|)))
(declare-const n120 Bool)
(assert (= n120 (ite |d3 is on this side| |side of d3/2 is west| |side of d3/2 is west'|)))
(declare-const n121 Bool)
(assert (= n121 (ite |d3 is on this side| |startup side of d3/2 is none|
    |startup side of d3/2 is none'|)))
(declare-const n122 Bool)
(assert (= n122 (ite |d3 is on this side| |startup side of d3/2 is east|
    |startup side of d3/2 is east'|)))
(declare-const n123 Bool)
(assert (= n123 (ite |d3 is on this side| |startup side of d3/2 is west|
    |startup side of d3/2 is west'|)))
(declare-const n124 Bool)
(assert (= n124 (ite |d3 is on this side| |operational side of d3/2 is none|
    |operational side of d3/2 is none'|)))
(declare-const n125 Bool)
(assert (= n125 (ite |d3 is on this side| |operational side of d3/2 is east|
    |operational side of d3/2 is east'|)))
(declare-const n126 Bool)
(assert (= n126 (ite |d3 is on this side| |operational side of d3/2 is west|
    |operational side of d3/2 is west'|)))
(declare-const n127 Bool)
(assert (= n127 (ite n52 |d1--d2 plugged| |d1--d2 plugged'|)))
(declare-const n128 Bool)
(assert (= n128 (ite n52 |d1--d2 broken| |d1--d2 broken'|)))
(declare-const n129 Bool)
(assert (= n129 (ite n54 |d1--d3 plugged| |d1--d3 plugged'|)))
(declare-const n130 Bool)
(assert (= n130 (ite n54 |d1--d3 broken| |d1--d3 broken'|)))
(declare-const n131 Bool)
(assert (= n131 (ite n57 |d2--d3 plugged| |d2--d3 plugged'|)))
(declare-const n132 Bool)
(assert (= n132 (ite n57 |d2--d3 broken| |d2--d3 broken'|)))
(declare-const n133 Bool)
(assert (= n133 (ite n54 |rival plugged| |rival plugged'|)))
(declare-const n134 Bool)
(assert (= n134 (ite n54 |rival broken| |rival broken'|)))
(declare-const n135 Bool)
(assert (= n135 (and (not |power of d1 is up|) (not |power of d1 is held|))))
(declare-const n136 Bool)
(assert (= n136 (and (not |power of d2 is up|) (not |power of d2 is held|))))
(declare-const n137 Bool)
(assert (= n137 (and (not |power of d3 is up|) (not |power of d3 is held|))))
(declare-const n138 Bool)
(assert (= n138 (and |power of d1 is up| |power of d2 is up|
    (not |operational side of d1/2 is none|) (not |operational side of d2/1 is none|) |d1/2 enabled|
    |d2/1 enabled| |d1--d2 plugged| (not |d1--d2 broken|) (not n135) (not n136))))
(declare-const n139 Bool)
(assert (= n139 (and |power of d1 is up| |power of d3 is up|
    (not |operational side of d1/3 is none|) (not |operational side of d3/1 is none|) |d1/3 enabled|
    |d3/1 enabled| |d1--d3 plugged| (not |d1--d3 broken|) (not n135) (not n137))))
(declare-const n140 Bool)
(assert (= n140 (and |power of d1 is up| |power of d3 is up|
    (not |operational side of d1/2 is none|) (not |operational side of d3/1 is none|) |d1/2 enabled|
    |d3/1 enabled| |rival plugged| (not |rival broken|) (not n135) (not n137))))
(declare-const n141 Bool)
(assert (= n141 (and (or (not |power of d2 is up|) (not |power of d3 is up|)
    |operational side of d2/3 is none| |operational side of d3/2 is none| (not |d2/3 enabled|)
    (not |d3/2 enabled|) (not |d2--d3 plugged|) |d2--d3 broken| n136 n137) (or (not n138) (and
    (not n139) (not n140))))))
(declare-const n142 Bool)
(assert (= n142 (and (not n139) (not n140) (or (not n138) n141))))
(declare-const n143 Bool)
(assert (= n143 (and (not n138) (or n141 n142))))
(declare-const n144 Bool)
(assert (= n144 (and (not n14) (not n15))))
(declare-const n145 Bool)
(assert (= n145 (and (not n33) (not n34))))
(declare-const n146 Bool)
(assert (= n146 (and (not n43) (not n44))))
(declare-const n147 Bool)
(assert (= n147 (and n14 n33 (not n69) (not n91) n61 n83 n127 (not n128) (not n144) (not n145))))
(declare-const n148 Bool)
(assert (= n148 (and n14 n43 (not n80) (not n113) n72 n105 n129 (not n130) (not n144) (not n146))))
(declare-const n149 Bool)
(assert (= n149 (and n14 n43 (not n69) (not n113) n61 n105 n133 (not n134) (not n144) (not n146))))
(declare-const n150 Bool)
(assert (= n150 (and (or (not n33) (not n43) n102 n124 (not n94) (not n116) (not n131) n132 n145
    n146) (or (not n147) (and (not n148) (not n149))))))
(declare-const n151 Bool)
(assert (= n151 (and (not n148) (not n149) (or (not n147) n150))))
(declare-const n152 Bool)
(assert (= n152 (and (not n147) (or n150 n151))))
(declare-const n153 Bool)
(assert (= n153 (xor |power of d1 is off| n12)))
(declare-const n154 Bool)
(assert (= n154 (xor |d1 is on this side| |d2 is on this side|)))
(declare-const n155 Bool)
(assert (= n155 (xor |d1 is on this side| |d3 is on this side|)))
(declare-const n156 Bool)
(assert (= n156 (xor |d2 is on this side| |d3 is on this side|)))
(declare-const n157 Bool)
(assert (= n157 (and |d1 is on this side| (or (not |number of d1 is 1|) (not n20)) (or
    (not |number of d1 is 2|) (not n21)) (or (not |number of d1 is 3|) (not n22)))))
(declare-const n158 Bool)
(assert (= n158 (and |d1 is on this side| (or (not |next number of d1 is 1|) (not n23)) (or
    (not |next number of d1 is 2|) (not n24)) (or (not |next number of d1 is 3|) (not n25)))))
(declare-const n159 Bool)
(assert (= n159 (and |d1 is on this side| (or (not |priority of d1 is 1|) (not n26)) (or
    (not |priority of d1 is 2|) (not n27)) (or (not |priority of d1 is 3|) (not n28)))))
(declare-const n160 Bool)
(assert (= n160 (and |d1 is on this side| (or (not |startup priority of d1 is 1|) (not n29)) (or
    (not |startup priority of d1 is 2|) (not n30)) (or (not |startup priority of d1 is 3|) (not n31)))))
(declare-const n161 Bool)
(assert (= n161 (and |d2 is on this side| (or (not |power of d2 is off|) (not (ite
    |d2 is on this side| |power of d2 is off| |power of d2 is off'|))) (or
    (not |power of d2 is starting|) (not n32)) (or (not |power of d2 is up|) (not n33)) (or
    (not |power of d2 is held|) (not n34)))))
(declare-const n162 Bool)
(assert (= n162 (and |d2 is on this side| (or (not |leader of d2 is none|) (not n35)) (or
    (not |leader of d2 is d1|) (not (ite |d2 is on this side| |leader of d2 is d1|
    |leader of d2 is d1'|))) (or (not |leader of d2 is d2|) (not (ite |d2 is on this side|
    |leader of d2 is d2| |leader of d2 is d2'|))) (or (not |leader of d2 is d3|) (not (ite
    |d2 is on this side| |leader of d2 is d3| |leader of d2 is d3'|))))))
(declare-const n163 Bool)
(assert (= n163 (and |d2 is on this side| (or (not |number of d2 is 1|) (not (ite
    |d2 is on this side| |number of d2 is 1| |number of d2 is 1'|))) (or (not |number of d2 is 2|)
    (not (ite |d2 is on this side| |number of d2 is 2| |number of d2 is 2'|))) (or
    (not |number of d2 is 3|) (not (ite |d2 is on this side| |number of d2 is 3|
    |number of d2 is 3'|))))))
(declare-const n164 Bool)
(assert (= n164 (and |d2 is on this side| (or (not |next number of d2 is 1|) (not (ite
    |d2 is on this side| |next number of d2 is 1| |next number of d2 is 1'|))) (or
    (not |next number of d2 is 2|) (not (ite |d2 is on this side| |next number of d2 is 2|
    |next number of d2 is 2'|))) (or (not |next number of d2 is 3|) (not (ite |d2 is on this side|
    |next number of d2 is 3| |next number of d2 is 3'|))))))
(declare-const n165 Bool)
(assert (= n165 (and |d2 is on this side| (or (not |priority of d2 is 1|) (not n36)) (or
    (not |priority of d2 is 2|) (not n37)) (or (not |priority of d2 is 3|) (not n38)))))
(declare-const n166 Bool)
(assert (= n166 (and |d2 is on this side| (or (not |startup priority of d2 is 1|) (not n39)) (or
    (not |startup priority of d2 is 2|) (not n40)) (or (not |startup priority of d2 is 3|) (not n41)))))
(declare-const n167 Bool)
(assert (= n167 (and |d3 is on this side| (or (not |power of d3 is off|) (not (ite
    |d3 is on this side| |power of d3 is off| |power of d3 is off'|))) (or
    (not |power of d3 is starting|) (not n42)) (or (not |power of d3 is up|) (not n43)) (or
    (not |power of d3 is held|) (not n44)))))
(declare-const n168 Bool)
(assert (= n168 (and |d3 is on this side| (or (not |leader of d3 is none|) (not n45)) (or
    (not |leader of d3 is d1|) (not (ite |d3 is on this side| |leader of d3 is d1|
    |leader of d3 is d1'|))) (or (not |leader of d3 is d2|) (not (ite |d3 is on this side|
    |leader of d3 is d2| |leader of d3 is d2'|))) (or (not |leader of d3 is d3|) (not (ite
    |d3 is on this side| |leader of d3 is d3| |leader of d3 is d3'|))))))
(declare-const n169 Bool)
(assert (= n169 (and |d3 is on this side| (or (not |number of d3 is 1|) (not (ite
    |d3 is on this side| |number of d3 is 1| |number of d3 is 1'|))) (or (not |number of d3 is 2|)
    (not (ite |d3 is on this side| |number of d3 is 2| |number of d3 is 2'|))) (or
    (not |number of d3 is 3|) (not (ite |d3 is on this side| |number of d3 is 3|
    |number of d3 is 3'|))))))
(declare-const n170 Bool)
(assert (= n170 (and |d3 is on this side| (or (not |next number of d3 is 1|) (not (ite
    |d3 is on this side| |next number of d3 is 1| |next number of d3 is 1'|))) (or
    (not |next number of d3 is 2|) (not (ite |d3 is on this side| |next number of d3 is 2|
    |next number of d3 is 2'|))) (or (not |next number of d3 is 3|) (not (ite |d3 is on this side|
    |next number of d3 is 3| |next number of d3 is 3'|))))))
(declare-const n171 Bool)
(assert (= n171 (and |d3 is on this side| (or (not |priority of d3 is 1|) (not n46)) (or
    (not |priority of d3 is 2|) (not n47)) (or (not |priority of d3 is 3|) (not n48)))))
(declare-const n172 Bool)
(assert (= n172 (and |d3 is on this side| (or (not |startup priority of d3 is 1|) (not n49)) (or
    (not |startup priority of d3 is 2|) (not n50)) (or (not |startup priority of d3 is 3|) (not n51)))))
(declare-const n173 Bool)
(assert (= n173 (and |d2 is on this side| |d3 is on this side| (xor |d2 senior to d3| n58))))
(declare-const n174 Bool)
(assert (= n174 (and |d2 is on this side| |d3 is on this side| (xor |d3 senior to d2| n60))))
(declare-const n175 Bool)
(assert (= n175 (and |d1 is on this side| (xor |d1/2 enabled| n61))))
(declare-const n176 Bool)
(assert (= n176 (and |d1 is on this side| (xor |d1/2 enabled in startup| n62))))
(declare-const n177 Bool)
(assert (= n177 (and |d1 is on this side| (or (not |side of d1/2 is none|) (not n63)) (or
    (not |side of d1/2 is east|) (not n64)) (or (not |side of d1/2 is west|) (not n65)))))
(declare-const n178 Bool)
(assert (= n178 (and |d1 is on this side| (or (not |startup side of d1/2 is none|) (not n66)) (or
    (not |startup side of d1/2 is east|) (not n67)) (or (not |startup side of d1/2 is west|)
    (not n68)))))
(declare-const n179 Bool)
(assert (= n179 (and |d1 is on this side| (or (not |operational side of d1/2 is none|) (not n69))
    (or (not |operational side of d1/2 is east|) (not n70)) (or
    (not |operational side of d1/2 is west|) (not n71)))))
(declare-const n180 Bool)
(assert (= n180 (and |d1 is on this side| (xor |d1/3 enabled| n72))))
(declare-const n181 Bool)
(assert (= n181 (and |d1 is on this side| (xor |d1/3 enabled in startup| n73))))
(declare-const n182 Bool)
(assert (= n182 (and |d1 is on this side| (or (not |side of d1/3 is none|) (not n74)) (or
    (not |side of d1/3 is east|) (not n75)) (or (not |side of d1/3 is west|) (not n76)))))
(declare-const n183 Bool)
(assert (= n183 (and |d1 is on this side| (or (not |startup side of d1/3 is none|) (not n77)) (or
    (not |startup side of d1/3 is east|) (not n78)) (or (not |startup side of d1/3 is west|)
    (not n79)))))
(declare-const n184 Bool)
(assert (= n184 (and |d1 is on this side| (or (not |operational side of d1/3 is none|) (not n80))
    (or (not |operational side of d1/3 is east|) (not n81)) (or
    (not |operational side of d1/3 is west|) (not n82)))))
(declare-const n185 Bool)
(assert (= n185 (and |d2 is on this side| (xor |d2/1 enabled| n83))))
(declare-const n186 Bool)
(assert (= n186 (and |d2 is on this side| (xor |d2/1 enabled in startup| n84))))
(declare-const n187 Bool)
(assert (= n187 (and |d2 is on this side| (or (not |side of d2/1 is none|) (not n85)) (or
    (not |side of d2/1 is east|) (not n86)) (or (not |side of d2/1 is west|) (not n87)))))
(declare-const n188 Bool)
(assert (= n188 (and |d2 is on this side| (or (not |startup side of d2/1 is none|) (not n88)) (or
    (not |startup side of d2/1 is east|) (not n89)) (or (not |startup side of d2/1 is west|)
    (not n90)))))
(declare-const n189 Bool)
(assert (= n189 (and |d2 is on this side| (or (not |operational side of d2/1 is none|) (not n91))
    (or (not |operational side of d2/1 is east|) (not n92)) (or
    (not |operational side of d2/1 is west|) (not n93)))))
(declare-const n190 Bool)
(assert (= n190 (and |d2 is on this side| (xor |d2/3 enabled| n94))))
(declare-const n191 Bool)
(assert (= n191 (and |d2 is on this side| (xor |d2/3 enabled in startup| n95))))
(declare-const n192 Bool)
(assert (= n192 (and |d2 is on this side| (or (not |side of d2/3 is none|) (not n96)) (or
    (not |side of d2/3 is east|) (not n97)) (or (not |side of d2/3 is west|) (not n98)))))
(declare-const n193 Bool)
(assert (= n193 (and |d2 is on this side| (or (not |startup side of d2/3 is none|) (not n99)) (or
    (not |startup side of d2/3 is east|) (not n100)) (or (not |startup side of d2/3 is west|)
    (not n101)))))
(declare-const n194 Bool)
(assert (= n194 (and |d2 is on this side| (or (not |operational side of d2/3 is none|) (not n102))
    (or (not |operational side of d2/3 is east|) (not n103)) (or
    (not |operational side of d2/3 is west|) (not n104)))))
(declare-const n195 Bool)
(assert (= n195 (and |d3 is on this side| (xor |d3/1 enabled| n105))))
(declare-const n196 Bool)
(assert (= n196 (and |d3 is on this side| (xor |d3/1 enabled in startup| n106))))
(declare-const n197 Bool)
(assert (= n197 (and |d3 is on this side| (or (not |side of d3/1 is none|) (not n107)) (or
    (not |side of d3/1 is east|) (not n108)) (or (not |side of d3/1 is west|) (not n109)))))
(declare-const n198 Bool)
(assert (= n198 (and |d3 is on this side| (or (not |startup side of d3/1 is none|) (not n110)) (or
    (not |startup side of d3/1 is east|) (not n111)) (or (not |startup side of d3/1 is west|)
    (not n112)))))
(declare-const n199 Bool)
(assert (= n199 (and |d3 is on this side| (or (not |operational side of d3/1 is none|) (not n113))
    (or (not |operational side of d3/1 is east|) (not n114)) (or
    (not |operational side of d3/1 is west|) (not n115)))))
(declare-const n200 Bool)
(assert (= n200 (and |d3 is on this side| (xor |d3/2 enabled| n116))))
(declare-const n201 Bool)
(assert (= n201 (and |d3 is on this side| (xor |d3/2 enabled in startup| n117))))
(declare-const n202 Bool)
(assert (= n202 (and |d3 is on this side| (or (not |side of d3/2 is none|) (not n118)) (or
    (not |side of d3/2 is east|) (not n119)) (or (not |side of d3/2 is west|) (not n120)))))
(declare-const n203 Bool)
(assert (= n203 (and |d3 is on this side| (or (not |startup side of d3/2 is none|) (not n121)) (or
    (not |startup side of d3/2 is east|) (not n122)) (or (not |startup side of d3/2 is west|)
    (not n123)))))
(declare-const n204 Bool)
(assert (= n204 (and |d3 is on this side| (or (not |operational side of d3/2 is none|) (not n124))
    (or (not |operational side of d3/2 is east|) (not n125)) (or
    (not |operational side of d3/2 is west|) (not n126)))))
(declare-const n205 Bool)
(assert (= n205 (xor |d1--d2 plugged| n127)))
(declare-const n206 Bool)
(assert (= n206 (and |d1 is on this side| |d2 is on this side| n205)))
(declare-const n207 Bool)
(assert (= n207 (xor |d1--d2 broken| n128)))
(declare-const n208 Bool)
(assert (= n208 (and |d1 is on this side| |d2 is on this side| n207)))
(declare-const n209 Bool)
(assert (= n209 (and |d1 is on this side| |d3 is on this side| (xor |d1--d3 plugged| n129))))
(declare-const n210 Bool)
(assert (= n210 (xor |d1--d3 broken| n130)))
(declare-const n211 Bool)
(assert (= n211 (and |d1 is on this side| |d3 is on this side| n210)))
(declare-const n212 Bool)
(assert (= n212 (and |d2 is on this side| |d3 is on this side| (xor |d2--d3 plugged| n131))))
(declare-const n213 Bool)
(assert (= n213 (xor |d2--d3 broken| n132)))
(declare-const n214 Bool)
(assert (= n214 (and |d2 is on this side| |d3 is on this side| n213)))
(declare-const n215 Bool)
(assert (= n215 (and |d1 is on this side| |d3 is on this side| (xor |rival plugged| n133))))
(declare-const n216 Bool)
(assert (= n216 (xor |rival broken| n134)))
(declare-const n217 Bool)
(assert (= n217 (and |d1 is on this side| |d3 is on this side| n216)))
(declare-const n218 Bool)
(assert (= n218 (and (not |s1 done|) (not |halted|) (or (and (not |d1 is on this side|)
    (not |power of d1 is starting|) (or |power of d1 is off| (not |power of d1 is up|)) (or
    |power of d1 is off| (not |power of d1 is held|))) (and (not |d1 is on this side|)
    (not |leader of d1 is none|) (or |power of d1 is off| (not |leader of d1 is d1|)) (or
    |power of d1 is off| (not |leader of d1 is d2|)) (or |power of d1 is off|
    (not |leader of d1 is d3|))) (and |power of d1 is off| |d1 senior to d2| (not n52) (not n154))
    (and |power of d1 is off| |d1 senior to d3| (not n54) (not n155)) (and |power of d1 is off|
    |d2 senior to d1| (not n52) (not n154)) (and |power of d1 is off| |d3 senior to d1| (not n54)
    (not n155)) (and |d1 is on this side| (or n1 (and (not n12) (not n13))) (or |power of d1 is off|
    (not |power of d1 is up|) n12 (not n14)) (or |power of d1 is off| (not |power of d1 is held|)
    n12 (not n15))) (and |d1 is on this side| (or (and (not |power of d1 is off|)
    (not |leader of d1 is none|)) (and (not n12) (not n16))) (or |power of d1 is off|
    (not |leader of d1 is d1|) n12 (not n17)) (or |power of d1 is off| (not |leader of d1 is d2|)
    n12 (not n18)) (or |power of d1 is off| (not |leader of d1 is d3|) n12 (not n19))) n157 n158
    n159 n160 n161 n162 n163 n164 n165 n166 n167 n168 n169 n170 n171 n172 (and |d1 is on this side|
    |d2 is on this side| (or (and (not |power of d1 is off|) |d1 senior to d2|) (and (not n12) n53))
    (or |power of d1 is off| (not |d1 senior to d2|) n12 (not n53))) (and |d1 is on this side|
    |d3 is on this side| (or (and (not |power of d1 is off|) |d1 senior to d3|) (and (not n12) n55))
    (or |power of d1 is off| (not |d1 senior to d3|) n12 (not n55))) (and |d1 is on this side|
    |d2 is on this side| (or (and (not |power of d1 is off|) |d2 senior to d1|) (and (not n12) n56))
    (or |power of d1 is off| (not |d2 senior to d1|) n12 (not n56))) n173 (and |d1 is on this side|
    |d3 is on this side| (or (and (not |power of d1 is off|) |d3 senior to d1|) (and (not n12) n59))
    (or |power of d1 is off| (not |d3 senior to d1|) n12 (not n59))) n174 n175 n176 n177 n178 n179
    n180 n181 n182 n183 n184 n185 n186 n187 n188 n189 n190 n191 n192 n193 n194 n195 n196 n197 n198
    n199 n200 n201 n202 n203 n204 n206 n208 n209 n211 n212 n214 n215 n217))))
(declare-const n219 Bool)
(assert (= n219 (and (not |s2 done|) (not |halted|) (or (and (not |d1 is on this side|)
    (not |power of d1 is off|)) (and (not |d1 is on this side|) (not |leader of d1 is none|) (or
    (not |power of d1 is off|) (not |leader of d1 is d1|)) (or (not |power of d1 is off|)
    (not |leader of d1 is d2|)) (or (not |power of d1 is off|) (not |leader of d1 is d3|))) (and
    (not |power of d1 is off|) |d1 senior to d2| (not n52) (not n154)) (and
    (not |power of d1 is off|) |d1 senior to d3| (not n54) (not n155)) (and
    (not |power of d1 is off|) |d2 senior to d1| (not n52) (not n154)) (and
    (not |power of d1 is off|) |d3 senior to d1| (not n54) (not n155)) n157 n158 n159 n160 n161 n162
    n163 n164 n165 n166 n167 n168 n169 n170 n171 n172 n173 n174 n175 n176 n177 n178 n179 n180 n181
    n182 n183 n184 n185 n186 n187 n188 n189 n190 n191 n192 n193 n194 n195 n196 n197 n198 n199 n200
    n201 n202 n203 n204 n206 n208 n209 n211 n212 n214 n215 n217 (and |d1 is on this side| (or (and
    |power of d1 is off| (not |leader of d1 is none|)) (and n12 (not n16))) (or
    (not |power of d1 is off|) (not |leader of d1 is d1|) (not n12) (not n17)) (or
    (not |power of d1 is off|) (not |leader of d1 is d2|) (not n12) (not n18)) (or
    (not |power of d1 is off|) (not |leader of d1 is d3|) (not n12) (not n19))) (and
    |d1 is on this side| |d2 is on this side| (or (and |power of d1 is off| |d1 senior to d2|) (and
    n12 n53)) (or (not |power of d1 is off|) (not |d1 senior to d2|) (not n12) (not n53))) (and
    |d1 is on this side| |d3 is on this side| (or (and |power of d1 is off| |d1 senior to d3|) (and
    n12 n55)) (or (not |power of d1 is off|) (not |d1 senior to d3|) (not n12) (not n55))) (and
    |d1 is on this side| |d2 is on this side| (or (and |power of d1 is off| |d2 senior to d1|) (and
    n12 n56)) (or (not |power of d1 is off|) (not |d2 senior to d1|) (not n12) (not n56))) (and
    |d1 is on this side| |d3 is on this side| (or (and |power of d1 is off| |d3 senior to d1|) (and
    n12 n59)) (or (not |power of d1 is off|) (not |d3 senior to d1|) (not n12) (not n59)))))))
(declare-const n220 Bool)
(assert (= n220 (xor n135 n144)))
(declare-const n221 Bool)
(assert (= n221 (and (not |s3 done|) (not |halted|) (or (and (not |d1 is on this side|)
    (not |power of d1 is starting|) (or (not |power of d1 is off|) |power of d1 is up|
    |power of d1 is held|)) (and (not |d1 is on this side|) (not |leader of d1 is none|) (or
    |power of d1 is up| |power of d1 is held| (not |leader of d1 is d1|)) (or |power of d1 is up|
    |power of d1 is held| (not |leader of d1 is d2|)) (or |power of d1 is up| |power of d1 is held|
    (not |leader of d1 is d3|))) (and |d1 senior to d2| (not n52) (not n135) (not n154)) (and
    |d1 senior to d3| (not n54) (not n135) (not n155)) (and |d2 senior to d1| (not n52) (not n135)
    (not n154)) (and |d3 senior to d1| (not n54) (not n135) (not n155)) n157 n158 n159 n160 n161
    n162 n163 n164 n165 n166 n167 n168 n169 n170 n171 n172 n173 n174 n175 n176 n177 n178 n179 n180
    n181 n182 n183 n184 n185 n186 n187 n188 n189 n190 n191 n192 n193 n194 n195 n196 n197 n198 n199
    n200 n201 n202 n203 n204 n206 n208 n209 n211 n212 n214 n215 n217 (and |d1 is on this side| (or
    (not |power of d1 is off|) |power of d1 is up| |power of d1 is held| (not n12) n14 n15) (or (and
    (not |power of d1 is starting|) (not |power of d1 is up|) (not |power of d1 is held|)) (and
    (not n13) (not n14) (not n15)))) (and |d1 is on this side| (or (and (not |power of d1 is up|)
    (not |power of d1 is held|) (not |leader of d1 is none|)) (and (not n14) (not n15) (not n16)))
    (or |power of d1 is up| |power of d1 is held| (not |leader of d1 is d1|) n14 n15 (not n17)) (or
    |power of d1 is up| |power of d1 is held| (not |leader of d1 is d2|) n14 n15 (not n18)) (or
    |power of d1 is up| |power of d1 is held| (not |leader of d1 is d3|) n14 n15 (not n19))) (and
    |d1 is on this side| |d2 is on this side| (or (and (not |power of d1 is up|)
    (not |power of d1 is held|) |d1 senior to d2|) (and (not n14) (not n15) n53)) (or
    |power of d1 is up| |power of d1 is held| (not |d1 senior to d2|) n14 n15 (not n53))) (and
    |d1 is on this side| |d3 is on this side| (or (and (not |power of d1 is up|)
    (not |power of d1 is held|) |d1 senior to d3|) (and (not n14) (not n15) n55)) (or
    |power of d1 is up| |power of d1 is held| (not |d1 senior to d3|) n14 n15 (not n55))) (and
    |d1 is on this side| |d2 is on this side| (or (and (not |power of d1 is up|)
    (not |power of d1 is held|) |d2 senior to d1|) (and (not n14) (not n15) n56)) (or
    |power of d1 is up| |power of d1 is held| (not |d2 senior to d1|) n14 n15 (not n56))) (and
    |d1 is on this side| |d3 is on this side| (or (and (not |power of d1 is up|)
    (not |power of d1 is held|) |d3 senior to d1|) (and (not n14) (not n15) n59)) (or
    |power of d1 is up| |power of d1 is held| (not |d3 senior to d1|) n14 n15 (not n59)))))))
(declare-const n222 Bool)
(assert (= n222 (and |d1 is on this side| (or (not |power of d1 is off|) (not n12)) (or
    (not |power of d1 is starting|) (not n13)) (or (not |power of d1 is up|) (not n14)) (or
    (not |power of d1 is held|) (not n15)))))
(declare-const n223 Bool)
(assert (= n223 (and |d1 is on this side| (or (not |leader of d1 is none|) (not n16)) (or
    (not |leader of d1 is d1|) (not n17)) (or (not |leader of d1 is d2|) (not n18)) (or
    (not |leader of d1 is d3|) (not n19)))))
(declare-const n224 Bool)
(assert (= n224 (and |d1 is on this side| |d2 is on this side| (xor |d1 senior to d2| n53))))
(declare-const n225 Bool)
(assert (= n225 (and |d1 is on this side| |d3 is on this side| (xor |d1 senior to d3| n55))))
(declare-const n226 Bool)
(assert (= n226 (and |d1 is on this side| |d2 is on this side| (xor |d2 senior to d1| n56))))
(declare-const n227 Bool)
(assert (= n227 (and |d1 is on this side| |d3 is on this side| (xor |d3 senior to d1| n59))))
(declare-const n228 Bool)
(assert (= n228 (and (not |s4 done|) (not |halted|) (or (and (not |d1 is on this side|)
    (not |number of d1 is 1|) (or |power of d1 is up| |power of d1 is held|
    (not |number of d1 is 2|)) (or |power of d1 is up| |power of d1 is held|
    (not |number of d1 is 3|))) (and (not |d1 is on this side|) (not |next number of d1 is 1|) (or
    |power of d1 is up| |power of d1 is held| (not |next number of d1 is 2|)) (or
    |power of d1 is up| |power of d1 is held| (not |next number of d1 is 3|))) n159 n160 n161 n162
    n163 n164 n165 n166 n167 n168 n169 n170 n171 n172 n173 n174 n175 n176 n177 n178 n179 n180 n181
    n182 n183 n184 n185 n186 n187 n188 n189 n190 n191 n192 n193 n194 n195 n196 n197 n198 n199 n200
    n201 n202 n203 n204 n206 n208 n209 n211 n212 n214 n215 n217 n222 n223 (and |d1 is on this side|
    (or (and (not |power of d1 is up|) (not |power of d1 is held|) (not |number of d1 is 1|)) (and
    (not n14) (not n15) (not n20))) (or |power of d1 is up| |power of d1 is held|
    (not |number of d1 is 2|) n14 n15 (not n21)) (or |power of d1 is up| |power of d1 is held|
    (not |number of d1 is 3|) n14 n15 (not n22))) (and |d1 is on this side| (or (and
    (not |power of d1 is up|) (not |power of d1 is held|) (not |next number of d1 is 1|)) (and
    (not n14) (not n15) (not n23))) (or |power of d1 is up| |power of d1 is held|
    (not |next number of d1 is 2|) n14 n15 (not n24)) (or |power of d1 is up| |power of d1 is held|
    (not |next number of d1 is 3|) n14 n15 (not n25))) n224 n225 n226 n227))))
(declare-const n229 Bool)
(assert (= n229 (and (not |s5 done|) (not |halted|) (or (and (not |d1 is on this side|)
    (not |priority of d1 is 1|) (or |power of d1 is up| |power of d1 is held|
    (not |priority of d1 is 2|)) (or |power of d1 is up| |power of d1 is held|
    (not |priority of d1 is 3|))) n157 n158 n160 n161 n162 n163 n164 n165 n166 n167 n168 n169 n170
    n171 n172 n173 n174 n175 n176 n177 n178 n179 n180 n181 n182 n183 n184 n185 n186 n187 n188 n189
    n190 n191 n192 n193 n194 n195 n196 n197 n198 n199 n200 n201 n202 n203 n204 n206 n208 n209 n211
    n212 n214 n215 n217 n222 n223 n224 n225 n226 n227 (and |d1 is on this side| (or (and
    (not |power of d1 is up|) (not |power of d1 is held|) (not |priority of d1 is 1|)) (and
    (not n14) (not n15) (not n26))) (or |power of d1 is up| |power of d1 is held|
    (not |priority of d1 is 2|) n14 n15 (not n27)) (or |power of d1 is up| |power of d1 is held|
    (not |priority of d1 is 3|) n14 n15 (not n28)))))))
(declare-const n230 Bool)
(assert (= n230 (and (not |s6 done|) (not |halted|) (or (and (not |d1 is on this side|)
    (not |d1/2 enabled|) (not n135)) n157 n158 n159 n160 n161 n162 n163 n164 n165 n166 n167 n168
    n169 n170 n171 n172 n173 n174 n176 n177 n178 n179 n180 n181 n182 n183 n184 n185 n186 n187 n188
    n189 n190 n191 n192 n193 n194 n195 n196 n197 n198 n199 n200 n201 n202 n203 n204 n206 n208 n209
    n211 n212 n214 n215 n217 n222 n223 n224 n225 n226 n227 (and |d1 is on this side| (or
    |power of d1 is up| |power of d1 is held| |d1/2 enabled| n14 n15 n61) (or (and
    (not |power of d1 is up|) (not |power of d1 is held|) (not |d1/2 enabled|)) (and (not n14)
    (not n15) (not n61))))))))
(declare-const n231 Bool)
(assert (= n231 (and (not |s7 done|) (not |halted|) (or (and (not |d1 is on this side|)
    |d1/2 enabled| (not n135)) n157 n158 n159 n160 n161 n162 n163 n164 n165 n166 n167 n168 n169 n170
    n171 n172 n173 n174 n176 n177 n178 n179 n180 n181 n182 n183 n184 n185 n186 n187 n188 n189 n190
    n191 n192 n193 n194 n195 n196 n197 n198 n199 n200 n201 n202 n203 n204 n206 n208 n209 n211 n212
    n214 n215 n217 n222 n223 n224 n225 n226 n227 (and |d1 is on this side| (or (and
    (not |power of d1 is up|) (not |power of d1 is held|) |d1/2 enabled|) (and (not n14) (not n15)
    n61)) (or |power of d1 is up| |power of d1 is held| (not |d1/2 enabled|) n14 n15 (not n61)))))))
(declare-const n232 Bool)
(assert (= n232 (and (not |power of d1 is up|) (not |power of d1 is held|) |side of d1/2 is east|)))
(declare-const n233 Bool)
(assert (= n233 (and (not |power of d1 is up|) (not |power of d1 is held|)
    |operational side of d1/2 is east|)))
(declare-const n234 Bool)
(assert (= n234 (and (not |power of d1 is up|) (not |power of d1 is held|) |side of d1/2 is east|
    (not n14) (not n15) n64)))
(declare-const n235 Bool)
(assert (= n235 (and (not |power of d1 is up|) (not |power of d1 is held|)
    |operational side of d1/2 is east| (not n14) (not n15) n70)))
(declare-const n236 Bool)
(assert (= n236 (and (not |s8 done|) (not |halted|) (or (and (not |d1 is on this side|)
    (not |side of d1/2 is west|) (or |power of d1 is up| |power of d1 is held|
    (not |side of d1/2 is none|)) (not n232)) (and (not |d1 is on this side|)
    (not |operational side of d1/2 is west|) (or |power of d1 is up| |power of d1 is held|
    (not |operational side of d1/2 is none|)) (not n233)) n157 n158 n159 n160 n161 n162 n163 n164
    n165 n166 n167 n168 n169 n170 n171 n172 n173 n174 n175 n176 n178 n180 n181 n182 n183 n184 n185
    n186 n187 n188 n189 n190 n191 n192 n193 n194 n195 n196 n197 n198 n199 n200 n201 n202 n203 n204
    n206 n208 n209 n211 n212 n214 n215 n217 n222 n223 n224 n225 n226 n227 (and |d1 is on this side|
    (or |power of d1 is up| |power of d1 is held| (not |side of d1/2 is none|) n14 n15 (not n63))
    (not n234) (or (and (not |power of d1 is up|) (not |power of d1 is held|)
    (not |side of d1/2 is west|)) (and (not n14) (not n15) (not n65)))) (and |d1 is on this side|
    (or |power of d1 is up| |power of d1 is held| (not |operational side of d1/2 is none|) n14 n15
    (not n69)) (not n235) (or (and (not |power of d1 is up|) (not |power of d1 is held|)
    (not |operational side of d1/2 is west|)) (and (not n14) (not n15) (not n71))))))))
(declare-const n237 Bool)
(assert (= n237 (and (not |s9 done|) (not |halted|) (or (and (not |d1 is on this side|)
    (not |side of d1/2 is none|) (not n232) (or |power of d1 is up| |power of d1 is held|
    (not |side of d1/2 is west|))) (and (not |d1 is on this side|)
    (not |operational side of d1/2 is none|) (not n233) (or |power of d1 is up|
    |power of d1 is held| (not |operational side of d1/2 is west|))) n157 n158 n159 n160 n161 n162
    n163 n164 n165 n166 n167 n168 n169 n170 n171 n172 n173 n174 n175 n176 n178 n180 n181 n182 n183
    n184 n185 n186 n187 n188 n189 n190 n191 n192 n193 n194 n195 n196 n197 n198 n199 n200 n201 n202
    n203 n204 n206 n208 n209 n211 n212 n214 n215 n217 n222 n223 n224 n225 n226 n227 (and
    |d1 is on this side| (not n234) (or (and (not |power of d1 is up|) (not |power of d1 is held|)
    (not |side of d1/2 is none|)) (and (not n14) (not n15) (not n63))) (or |power of d1 is up|
    |power of d1 is held| (not |side of d1/2 is west|) n14 n15 (not n65))) (and |d1 is on this side|
    (not n235) (or (and (not |power of d1 is up|) (not |power of d1 is held|)
    (not |operational side of d1/2 is none|)) (and (not n14) (not n15) (not n69))) (or
    |power of d1 is up| |power of d1 is held| (not |operational side of d1/2 is west|) n14 n15
    (not n71)))))))
(declare-const n238 Bool)
(assert (= n238 (and (not n135) (or |power of d1 is up| |power of d1 is held| n143) (or
    |power of d1 is up| |power of d1 is held| n142))))
(declare-const n239 Bool)
(assert (= n239 (ite n238 |side of d1/2 is none| |operational side of d1/2 is none|)))
(declare-const n240 Bool)
(assert (= n240 (ite n238 |side of d1/2 is east| |operational side of d1/2 is east|)))
(declare-const n241 Bool)
(assert (= n241 (ite n238 |side of d1/2 is west| |operational side of d1/2 is west|)))
(declare-const n242 Bool)
(assert (= n242 (ite n238 |side of d1/3 is none| |operational side of d1/3 is none|)))
(declare-const n243 Bool)
(assert (= n243 (ite n238 |side of d1/3 is east| |operational side of d1/3 is east|)))
(declare-const n244 Bool)
(assert (= n244 (ite n238 |side of d1/3 is west| |operational side of d1/3 is west|)))
(declare-const n245 Bool)
(assert (= n245 (ite n238 (ite n143 |operational side of d2/1 is none| |side of d2/1 is none|)
    |operational side of d2/1 is none|)))
(declare-const n246 Bool)
(assert (= n246 (ite n238 (ite n143 |operational side of d2/1 is east| |side of d2/1 is east|)
    |operational side of d2/1 is east|)))
(declare-const n247 Bool)
(assert (= n247 (ite n238 (ite n143 |operational side of d2/1 is west| |side of d2/1 is west|)
    |operational side of d2/1 is west|)))
(declare-const n248 Bool)
(assert (= n248 (ite n238 (ite n143 |operational side of d2/3 is none| |side of d2/3 is none|)
    |operational side of d2/3 is none|)))
(declare-const n249 Bool)
(assert (= n249 (ite n238 (ite n143 |operational side of d2/3 is east| |side of d2/3 is east|)
    |operational side of d2/3 is east|)))
(declare-const n250 Bool)
(assert (= n250 (ite n238 (ite n143 |operational side of d2/3 is west| |side of d2/3 is west|)
    |operational side of d2/3 is west|)))
(declare-const n251 Bool)
(assert (= n251 (ite n238 (ite n142 |operational side of d3/1 is none| |side of d3/1 is none|)
    |operational side of d3/1 is none|)))
(declare-const n252 Bool)
(assert (= n252 (ite n238 (ite n142 |operational side of d3/1 is east| |side of d3/1 is east|)
    |operational side of d3/1 is east|)))
(declare-const n253 Bool)
(assert (= n253 (ite n238 (ite n142 |operational side of d3/1 is west| |side of d3/1 is west|)
    |operational side of d3/1 is west|)))
(declare-const n254 Bool)
(assert (= n254 (ite n238 (ite n142 |operational side of d3/2 is none| |side of d3/2 is none|)
    |operational side of d3/2 is none|)))
(declare-const n255 Bool)
(assert (= n255 (ite n238 (ite n142 |operational side of d3/2 is east| |side of d3/2 is east|)
    |operational side of d3/2 is east|)))
(declare-const n256 Bool)
(assert (= n256 (ite n238 (ite n142 |operational side of d3/2 is west| |side of d3/2 is west|)
    |operational side of d3/2 is west|)))
(declare-const n257 Bool)
(assert (= n257 (and (not n144) (or n14 n15 n152) (or n14 n15 n151))))
(declare-const n258 Bool)
(assert (= n258 (xor n238 n257)))
(declare-const n259 Bool)
(assert (= n259 (and (or |d1 is on this side| (and |operational side of d1/2 is none| n239) (and
    |operational side of d1/2 is east| n240) (and |operational side of d1/2 is west| n241)) (or
    |d1 is on this side| (and |operational side of d1/3 is none| n242) (and
    |operational side of d1/3 is east| n243) (and |operational side of d1/3 is west| n244)) (or
    |d2 is on this side| (and |operational side of d2/1 is none| n245) (and
    |operational side of d2/1 is east| n246) (and |operational side of d2/1 is west| n247)) (or
    |d2 is on this side| (and |operational side of d2/3 is none| n248) (and
    |operational side of d2/3 is east| n249) (and |operational side of d2/3 is west| n250)) (or
    |d3 is on this side| (and |operational side of d3/1 is none| n251) (and
    |operational side of d3/1 is east| n252) (and |operational side of d3/1 is west| n253)) (or
    |d3 is on this side| (and |operational side of d3/2 is none| n254) (and
    |operational side of d3/2 is east| n255) (and |operational side of d3/2 is west| n256))
    (not n157) (not n158) (not n159) (not n160) (not n161) (not n162) (not n163) (not n164)
    (not n165) (not n166) (not n167) (not n168) (not n169) (not n170) (not n171) (not n172)
    (not n173) (not n174) (not n175) (not n176) (not n177) (not n178) (not n180) (not n181)
    (not n182) (not n183) (not n185) (not n186) (not n187) (not n188) (not n190) (not n191)
    (not n192) (not n193) (not n195) (not n196) (not n197) (not n198) (not n200) (not n201)
    (not n202) (not n203) (not n206) (not n208) (not n209) (not n211) (not n212) (not n214)
    (not n215) (not n217) (not n222) (not n223) (not n224) (not n225) (not n226) (not n227) (or
    (not |d1 is on this side|) (and n239 (ite n257 n63 n69)) (and n240 (ite n257 n64 n70)) (and n241
    (ite n257 n65 n71))) (or (not |d1 is on this side|) (and n242 (ite n257 n74 n80)) (and n243 (ite
    n257 n75 n81)) (and n244 (ite n257 n76 n82))) (or (not |d2 is on this side|) (and n245 (ite n257
    (ite n152 n91 n85) n91)) (and n246 (ite n257 (ite n152 n92 n86) n92)) (and n247 (ite n257 (ite
    n152 n93 n87) n93))) (or (not |d2 is on this side|) (and n248 (ite n257 (ite n152 n102 n96) n102))
    (and n249 (ite n257 (ite n152 n103 n97) n103)) (and n250 (ite n257 (ite n152 n104 n98) n104)))
    (or (not |d3 is on this side|) (and n251 (ite n257 (ite n151 n113 n107) n113)) (and n252 (ite
    n257 (ite n151 n114 n108) n114)) (and n253 (ite n257 (ite n151 n115 n109) n115))) (or
    (not |d3 is on this side|) (and n254 (ite n257 (ite n151 n124 n118) n124)) (and n255 (ite n257
    (ite n151 n125 n119) n125)) (and n256 (ite n257 (ite n151 n126 n120) n126))))))
(declare-const n260 Bool)
(assert (= n260 (ite n238 |priority of d1 is 1| |startup priority of d1 is 1|)))
(declare-const n261 Bool)
(assert (= n261 (ite n238 |priority of d1 is 2| |startup priority of d1 is 2|)))
(declare-const n262 Bool)
(assert (= n262 (ite n238 |priority of d1 is 3| |startup priority of d1 is 3|)))
(declare-const n263 Bool)
(assert (= n263 (ite n238 (ite n143 |startup priority of d2 is 1| |priority of d2 is 1|)
    |startup priority of d2 is 1|)))
(declare-const n264 Bool)
(assert (= n264 (ite n238 (ite n143 |startup priority of d2 is 2| |priority of d2 is 2|)
    |startup priority of d2 is 2|)))
(declare-const n265 Bool)
(assert (= n265 (ite n238 (ite n143 |startup priority of d2 is 3| |priority of d2 is 3|)
    |startup priority of d2 is 3|)))
(declare-const n266 Bool)
(assert (= n266 (ite n238 (ite n142 |startup priority of d3 is 1| |priority of d3 is 1|)
    |startup priority of d3 is 1|)))
(declare-const n267 Bool)
(assert (= n267 (ite n238 (ite n142 |startup priority of d3 is 2| |priority of d3 is 2|)
    |startup priority of d3 is 2|)))
(declare-const n268 Bool)
(assert (= n268 (ite n238 (ite n142 |startup priority of d3 is 3| |priority of d3 is 3|)
    |startup priority of d3 is 3|)))
(declare-const n269 Bool)
(assert (= n269 (ite n238 |d1/2 enabled| |d1/2 enabled in startup|)))
(declare-const n270 Bool)
(assert (= n270 (ite n238 |side of d1/2 is none| |startup side of d1/2 is none|)))
(declare-const n271 Bool)
(assert (= n271 (ite n238 |side of d1/2 is east| |startup side of d1/2 is east|)))
(declare-const n272 Bool)
(assert (= n272 (ite n238 |side of d1/2 is west| |startup side of d1/2 is west|)))
(declare-const n273 Bool)
(assert (= n273 (ite n238 |d1/3 enabled| |d1/3 enabled in startup|)))
(declare-const n274 Bool)
(assert (= n274 (ite n238 |side of d1/3 is none| |startup side of d1/3 is none|)))
(declare-const n275 Bool)
(assert (= n275 (ite n238 |side of d1/3 is east| |startup side of d1/3 is east|)))
(declare-const n276 Bool)
(assert (= n276 (ite n238 |side of d1/3 is west| |startup side of d1/3 is west|)))
(declare-const n277 Bool)
(assert (= n277 (ite n238 (ite n143 |d2/1 enabled in startup| |d2/1 enabled|)
    |d2/1 enabled in startup|)))
(declare-const n278 Bool)
(assert (= n278 (ite n238 (ite n143 |startup side of d2/1 is none| |side of d2/1 is none|)
    |startup side of d2/1 is none|)))
(declare-const n279 Bool)
(assert (= n279 (ite n238 (ite n143 |startup side of d2/1 is east| |side of d2/1 is east|)
    |startup side of d2/1 is east|)))
(declare-const n280 Bool)
(assert (= n280 (ite n238 (ite n143 |startup side of d2/1 is west| |side of d2/1 is west|)
    |startup side of d2/1 is west|)))
(declare-const n281 Bool)
(assert (= n281 (ite n238 (ite n143 |d2/3 enabled in startup| |d2/3 enabled|)
    |d2/3 enabled in startup|)))
(declare-const n282 Bool)
(assert (= n282 (ite n238 (ite n143 |startup side of d2/3 is none| |side of d2/3 is none|)
    |startup side of d2/3 is none|)))
(declare-const n283 Bool)
(assert (= n283 (ite n238 (ite n143 |startup side of d2/3 is east| |side of d2/3 is east|)
    |startup side of d2/3 is east|)))
(declare-const n284 Bool)
(assert (= n284 (ite n238 (ite n143 |startup side of d2/3 is west| |side of d2/3 is west|)
    |startup side of d2/3 is west|)))
(declare-const n285 Bool)
(assert (= n285 (ite n238 (ite n142 |d3/1 enabled in startup| |d3/1 enabled|)
    |d3/1 enabled in startup|)))
(declare-const n286 Bool)
(assert (= n286 (ite n238 (ite n142 |startup side of d3/1 is none| |side of d3/1 is none|)
    |startup side of d3/1 is none|)))
(declare-const n287 Bool)
(assert (= n287 (ite n238 (ite n142 |startup side of d3/1 is east| |side of d3/1 is east|)
    |startup side of d3/1 is east|)))
(declare-const n288 Bool)
(assert (= n288 (ite n238 (ite n142 |startup side of d3/1 is west| |side of d3/1 is west|)
    |startup side of d3/1 is west|)))
(declare-const n289 Bool)
(assert (= n289 (ite n238 (ite n142 |d3/2 enabled in startup| |d3/2 enabled|)
    |d3/2 enabled in startup|)))
(declare-const n290 Bool)
(assert (= n290 (ite n238 (ite n142 |startup side of d3/2 is none| |side of d3/2 is none|)
    |startup side of d3/2 is none|)))
(declare-const n291 Bool)
(assert (= n291 (ite n238 (ite n142 |startup side of d3/2 is east| |side of d3/2 is east|)
    |startup side of d3/2 is east|)))
(declare-const n292 Bool)
(assert (= n292 (ite n238 (ite n142 |startup side of d3/2 is west| |side of d3/2 is west|)
    |startup side of d3/2 is west|)))
(declare-const n293 Bool)
(assert (= n293 (and (or |d1 is on this side| (and |startup priority of d1 is 1| n260) (and
    |startup priority of d1 is 2| n261) (and |startup priority of d1 is 3| n262)) (or
    |d2 is on this side| (and |startup priority of d2 is 1| n263) (and |startup priority of d2 is 2|
    n264) (and |startup priority of d2 is 3| n265)) (or |d3 is on this side| (and
    |startup priority of d3 is 1| n266) (and |startup priority of d3 is 2| n267) (and
    |startup priority of d3 is 3| n268)) (or |d1 is on this side| (= |d1/2 enabled in startup| n269))
    (or |d1 is on this side| (and |startup side of d1/2 is none| n270) (and
    |startup side of d1/2 is east| n271) (and |startup side of d1/2 is west| n272)) (or
    |d1 is on this side| (= |d1/3 enabled in startup| n273)) (or |d1 is on this side| (and
    |startup side of d1/3 is none| n274) (and |startup side of d1/3 is east| n275) (and
    |startup side of d1/3 is west| n276)) (or |d2 is on this side| (= |d2/1 enabled in startup| n277))
    (or |d2 is on this side| (and |startup side of d2/1 is none| n278) (and
    |startup side of d2/1 is east| n279) (and |startup side of d2/1 is west| n280)) (or
    |d2 is on this side| (= |d2/3 enabled in startup| n281)) (or |d2 is on this side| (and
    |startup side of d2/3 is none| n282) (and |startup side of d2/3 is east| n283) (and
    |startup side of d2/3 is west| n284)) (or |d3 is on this side| (= |d3/1 enabled in startup| n285))
    (or |d3 is on this side| (and |startup side of d3/1 is none| n286) (and
    |startup side of d3/1 is east| n287) (and |startup side of d3/1 is west| n288)) (or
    |d3 is on this side| (= |d3/2 enabled in startup| n289)) (or |d3 is on this side| (and
    |startup side of d3/2 is none| n290) (and |startup side of d3/2 is east| n291) (and
    |startup side of d3/2 is west| n292)) (not n157) (not n158) (not n159) (not n161) (not n162)
    (not n163) (not n164) (not n165) (not n167) (not n168) (not n169) (not n170) (not n171)
    (not n173) (not n174) (not n175) (not n177) (not n179) (not n180) (not n182) (not n184)
    (not n185) (not n187) (not n189) (not n190) (not n192) (not n194) (not n195) (not n197)
    (not n199) (not n200) (not n202) (not n204) (not n206) (not n208) (not n209) (not n211)
    (not n212) (not n214) (not n215) (not n217) (not n222) (not n223) (not n224) (not n225)
    (not n226) (not n227) (or (not |d1 is on this side|) (and n260 (ite n257 n26 n29)) (and n261
    (ite n257 n27 n30)) (and n262 (ite n257 n28 n31))) (or (not |d2 is on this side|) (and n263 (ite
    n257 (ite n152 n39 n36) n39)) (and n264 (ite n257 (ite n152 n40 n37) n40)) (and n265 (ite n257
    (ite n152 n41 n38) n41))) (or (not |d3 is on this side|) (and n266 (ite n257 (ite n151 n49 n46)
    n49)) (and n267 (ite n257 (ite n151 n50 n47) n50)) (and n268 (ite n257 (ite n151 n51 n48) n51)))
    (or (not |d1 is on this side|) (= n269 (ite n257 n61 n62))) (or (not |d1 is on this side|) (and
    n270 (ite n257 n63 n66)) (and n271 (ite n257 n64 n67)) (and n272 (ite n257 n65 n68))) (or
    (not |d1 is on this side|) (= n273 (ite n257 n72 n73))) (or (not |d1 is on this side|) (and n274
    (ite n257 n74 n77)) (and n275 (ite n257 n75 n78)) (and n276 (ite n257 n76 n79))) (or
    (not |d2 is on this side|) (= n277 (ite n257 (ite n152 n84 n83) n84))) (or
    (not |d2 is on this side|) (and n278 (ite n257 (ite n152 n88 n85) n88)) (and n279 (ite n257 (ite
    n152 n89 n86) n89)) (and n280 (ite n257 (ite n152 n90 n87) n90))) (or (not |d2 is on this side|)
    (= n281 (ite n257 (ite n152 n95 n94) n95))) (or (not |d2 is on this side|) (and n282 (ite n257
    (ite n152 n99 n96) n99)) (and n283 (ite n257 (ite n152 n100 n97) n100)) (and n284 (ite n257 (ite
    n152 n101 n98) n101))) (or (not |d3 is on this side|) (= n285 (ite n257 (ite n151 n106 n105)
    n106))) (or (not |d3 is on this side|) (and n286 (ite n257 (ite n151 n110 n107) n110)) (and n287
    (ite n257 (ite n151 n111 n108) n111)) (and n288 (ite n257 (ite n151 n112 n109) n112))) (or
    (not |d3 is on this side|) (= n289 (ite n257 (ite n151 n117 n116) n117))) (or
    (not |d3 is on this side|) (and n290 (ite n257 (ite n151 n121 n118) n121)) (and n291 (ite n257
    (ite n151 n122 n119) n122)) (and n292 (ite n257 (ite n151 n123 n120) n123))))))
(declare-const n294 Bool)
(assert (= n294 (and (not |s12 done|) (not |halted|) (or (and (not |d1--d2 plugged|)
    (not |rival plugged|) (not n52)) n157 n158 n159 n160 n161 n162 n163 n164 n165 n166 n167 n168
    n169 n170 n171 n172 n173 n174 n175 n176 n177 n178 n179 n180 n181 n182 n183 n184 n185 n186 n187
    n188 n189 n190 n191 n192 n193 n194 n195 n196 n197 n198 n199 n200 n201 n202 n203 n204 n208 n209
    n211 n212 n214 n215 n217 n222 n223 n224 n225 n226 n227 (and |d1 is on this side|
    |d2 is on this side| (or |d1--d2 plugged| (not |rival plugged|) n127 (not n133)) (or (and
    (not |d1--d2 plugged|) |rival plugged|) (and (not n127) n133)))))))
(declare-const n295 Bool)
(assert (= n295 (and (not n157) (not n158) (not n159) (not n160) (not n161) (not n162) (not n163)
    (not n164) (not n165) (not n166) (not n167) (not n168) (not n169) (not n170) (not n171)
    (not n172) (not n173) (not n174) (not n175) (not n176) (not n177) (not n178) (not n179)
    (not n180) (not n181) (not n182) (not n183) (not n184) (not n185) (not n186) (not n187)
    (not n188) (not n189) (not n190) (not n191) (not n192) (not n193) (not n194) (not n195)
    (not n196) (not n197) (not n198) (not n199) (not n200) (not n201) (not n202) (not n203)
    (not n204) (not n206) (not n208) (not n209) (not n211) (not n212) (not n214) (not n215)
    (not n217) (not n222) (not n223) (not n224) (not n225) (not n226) (not n227))))
(declare-const n296 Bool)
(assert (= n296 (and (not |d1 is on this side|) (not |power of d1 is up|))))
(declare-const n297 Bool)
(assert (= n297 (and (not |d1 is on this side|) (not |leader of d1 is none|))))
(declare-const n298 Bool)
(assert (= n298 (and (not |d1 is on this side|) (or (not |number of d1 is 1|)
    (not |next number of d1 is 1|)) (or (not |number of d1 is 2|) (not |next number of d1 is 2|))
    (or (not |number of d1 is 3|) (not |next number of d1 is 3|)))))
(declare-const n299 Bool)
(assert (= n299 (and (not |d1 is on this side|) (or (not |priority of d1 is 1|)
    (not |startup priority of d1 is 1|)) (or (not |priority of d1 is 2|)
    (not |startup priority of d1 is 2|)) (or (not |priority of d1 is 3|)
    (not |startup priority of d1 is 3|)))))
(declare-const n300 Bool)
(assert (= n300 (and |d1 senior to d2| (not n52) (not n154))))
(declare-const n301 Bool)
(assert (= n301 (and |d1 senior to d3| (not n54) (not n155))))
(declare-const n302 Bool)
(assert (= n302 (and (not n52) (not n154) (or |power of d2 is up| |power of d2 is held|
    |d2 senior to d1|) (or (not |d2 senior to d1|) n136))))
(declare-const n303 Bool)
(assert (= n303 (and (not n54) (not n155) (or |power of d3 is up| |power of d3 is held|
    |d3 senior to d1|) (or (not |d3 senior to d1|) n137))))
(declare-const n304 Bool)
(assert (= n304 (and (not |d1 is on this side|) (xor |d1/2 enabled| |d1/2 enabled in startup|))))
(declare-const n305 Bool)
(assert (= n305 (and (not |d1 is on this side|) (or (not |side of d1/2 is none|)
    (not |startup side of d1/2 is none|)) (or (not |side of d1/2 is east|)
    (not |startup side of d1/2 is east|)) (or (not |side of d1/2 is west|)
    (not |startup side of d1/2 is west|)))))
(declare-const n306 Bool)
(assert (= n306 (and (not |d1 is on this side|) (or (not |startup side of d1/2 is none|)
    (not |operational side of d1/2 is none|)) (or (not |startup side of d1/2 is east|)
    (not |operational side of d1/2 is east|)) (or (not |startup side of d1/2 is west|)
    (not |operational side of d1/2 is west|)))))
(declare-const n307 Bool)
(assert (= n307 (and (not |d1 is on this side|) (xor |d1/3 enabled| |d1/3 enabled in startup|))))
(declare-const n308 Bool)
(assert (= n308 (and (not |d1 is on this side|) (or (not |side of d1/3 is none|)
    (not |startup side of d1/3 is none|)) (or (not |side of d1/3 is east|)
    (not |startup side of d1/3 is east|)) (or (not |side of d1/3 is west|)
    (not |startup side of d1/3 is west|)))))
(declare-const n309 Bool)
(assert (= n309 (and (not |d1 is on this side|) (or (not |startup side of d1/3 is none|)
    (not |operational side of d1/3 is none|)) (or (not |startup side of d1/3 is east|)
    (not |operational side of d1/3 is east|)) (or (not |startup side of d1/3 is west|)
    (not |operational side of d1/3 is west|)))))
(declare-const n310 Bool)
(assert (= n310 (and (not |power of d2 is up|) (not |power of d2 is held|) (not n33) (not n34))))
(declare-const n311 Bool)
(assert (= n311 (and (not n136) (not n145))))
(declare-const n312 Bool)
(assert (= n312 (and (not |power of d3 is up|) (not |power of d3 is held|) (not n43) (not n44))))
(declare-const n313 Bool)
(assert (= n313 (and (not n137) (not n146))))
(declare-const n314 Bool)
(assert (= n314 (and (not n158) (not n160) (not n161) (not n162) (not n163) (not n164) (not n165)
    (not n166) (not n167) (not n168) (not n169) (not n170) (not n171) (not n172) (not n173)
    (not n174) (not n176) (not n178) (not n181) (not n183) (not n185) (not n186) (not n187)
    (not n188) (not n189) (not n190) (not n191) (not n192) (not n193) (not n194) (not n195)
    (not n196) (not n197) (not n198) (not n199) (not n200) (not n201) (not n202) (not n203)
    (not n204) (not n206) (not n208) (not n209) (not n211) (not n212) (not n214) (not n215)
    (not n217) (or (not |d1 is on this side|) (not |d2 is on this side|) n310 n311) (or
    (not |d1 is on this side|) (not |d3 is on this side|) n312 n313))))
(declare-const n315 Bool)
(assert (= n315 (and (not |d2 is on this side|) (not |power of d2 is up|))))
(declare-const n316 Bool)
(assert (= n316 (and (not |d2 is on this side|) (not |leader of d2 is none|))))
(declare-const n317 Bool)
(assert (= n317 (and (not |d2 is on this side|) (or (not |number of d2 is 1|)
    (not |next number of d2 is 1|)) (or (not |number of d2 is 2|) (not |next number of d2 is 2|))
    (or (not |number of d2 is 3|) (not |next number of d2 is 3|)))))
(declare-const n318 Bool)
(assert (= n318 (and (not |d2 is on this side|) (or (not |priority of d2 is 1|)
    (not |startup priority of d2 is 1|)) (or (not |priority of d2 is 2|)
    (not |startup priority of d2 is 2|)) (or (not |priority of d2 is 3|)
    (not |startup priority of d2 is 3|)))))
(declare-const n319 Bool)
(assert (= n319 (and (not n52) (not n154) (or (not |d1 senior to d2|) n135) (or |power of d1 is up|
    |power of d1 is held| |d1 senior to d2|))))
(declare-const n320 Bool)
(assert (= n320 (and |d2 senior to d1| (not n52) (not n154))))
(declare-const n321 Bool)
(assert (= n321 (and |d2 senior to d3| (not n57) (not n156))))
(declare-const n322 Bool)
(assert (= n322 (and (not n57) (not n156) (or |power of d3 is up| |power of d3 is held|
    |d3 senior to d2|) (or (not |d3 senior to d2|) n137))))
(declare-const n323 Bool)
(assert (= n323 (and (not |d2 is on this side|) (xor |d2/1 enabled| |d2/1 enabled in startup|))))
(declare-const n324 Bool)
(assert (= n324 (and (not |d2 is on this side|) (or (not |side of d2/1 is none|)
    (not |startup side of d2/1 is none|)) (or (not |side of d2/1 is east|)
    (not |startup side of d2/1 is east|)) (or (not |side of d2/1 is west|)
    (not |startup side of d2/1 is west|)))))
(declare-const n325 Bool)
(assert (= n325 (and (not |d2 is on this side|) (or (not |startup side of d2/1 is none|)
    (not |operational side of d2/1 is none|)) (or (not |startup side of d2/1 is east|)
    (not |operational side of d2/1 is east|)) (or (not |startup side of d2/1 is west|)
    (not |operational side of d2/1 is west|)))))
(declare-const n326 Bool)
(assert (= n326 (and (not |d2 is on this side|) (xor |d2/3 enabled| |d2/3 enabled in startup|))))
(declare-const n327 Bool)
(assert (= n327 (and (not |d2 is on this side|) (or (not |side of d2/3 is none|)
    (not |startup side of d2/3 is none|)) (or (not |side of d2/3 is east|)
    (not |startup side of d2/3 is east|)) (or (not |side of d2/3 is west|)
    (not |startup side of d2/3 is west|)))))
(declare-const n328 Bool)
(assert (= n328 (and (not |d2 is on this side|) (or (not |startup side of d2/3 is none|)
    (not |operational side of d2/3 is none|)) (or (not |startup side of d2/3 is east|)
    (not |operational side of d2/3 is east|)) (or (not |startup side of d2/3 is west|)
    (not |operational side of d2/3 is west|)))))
(declare-const n329 Bool)
(assert (= n329 (and (not |power of d1 is up|) (not |power of d1 is held|) (not n14) (not n15))))
(declare-const n330 Bool)
(assert (= n330 (and (not n135) (not n144))))
(declare-const n331 Bool)
(assert (= n331 (and (not n157) (not n158) (not n159) (not n160) (not n164) (not n166) (not n167)
    (not n168) (not n169) (not n170) (not n171) (not n172) (not n175) (not n176) (not n177)
    (not n178) (not n179) (not n180) (not n181) (not n182) (not n183) (not n184) (not n186)
    (not n188) (not n191) (not n193) (not n195) (not n196) (not n197) (not n198) (not n199)
    (not n200) (not n201) (not n202) (not n203) (not n204) (not n206) (not n208) (not n209)
    (not n211) (not n212) (not n214) (not n215) (not n217) (not n222) (not n223) (not n225)
    (not n227) (or (not |d1 is on this side|) (not |d2 is on this side|) n329 n330) (or
    (not |d2 is on this side|) (not |d3 is on this side|) n312 n313))))
(declare-const n332 Bool)
(assert (= n332 (and (not |d3 is on this side|) (not |power of d3 is up|))))
(declare-const n333 Bool)
(assert (= n333 (and (not |d3 is on this side|) (not |leader of d3 is none|))))
(declare-const n334 Bool)
(assert (= n334 (and (not |d3 is on this side|) (or (not |number of d3 is 1|)
    (not |next number of d3 is 1|)) (or (not |number of d3 is 2|) (not |next number of d3 is 2|))
    (or (not |number of d3 is 3|) (not |next number of d3 is 3|)))))
(declare-const n335 Bool)
(assert (= n335 (and (not |d3 is on this side|) (or (not |priority of d3 is 1|)
    (not |startup priority of d3 is 1|)) (or (not |priority of d3 is 2|)
    (not |startup priority of d3 is 2|)) (or (not |priority of d3 is 3|)
    (not |startup priority of d3 is 3|)))))
(declare-const n336 Bool)
(assert (= n336 (and (not n54) (not n155) (or (not |d1 senior to d3|) n135) (or |power of d1 is up|
    |power of d1 is held| |d1 senior to d3|))))
(declare-const n337 Bool)
(assert (= n337 (and (not n57) (not n156) (or |power of d2 is up| |power of d2 is held|
    |d2 senior to d3|) (or (not |d2 senior to d3|) n136))))
(declare-const n338 Bool)
(assert (= n338 (and |d3 senior to d1| (not n54) (not n155))))
(declare-const n339 Bool)
(assert (= n339 (and |d3 senior to d2| (not n57) (not n156))))
(declare-const n340 Bool)
(assert (= n340 (and (not |d3 is on this side|) (xor |d3/1 enabled| |d3/1 enabled in startup|))))
(declare-const n341 Bool)
(assert (= n341 (and (not |d3 is on this side|) (or (not |side of d3/1 is none|)
    (not |startup side of d3/1 is none|)) (or (not |side of d3/1 is east|)
    (not |startup side of d3/1 is east|)) (or (not |side of d3/1 is west|)
    (not |startup side of d3/1 is west|)))))
(declare-const n342 Bool)
(assert (= n342 (and (not |d3 is on this side|) (or (not |startup side of d3/1 is none|)
    (not |operational side of d3/1 is none|)) (or (not |startup side of d3/1 is east|)
    (not |operational side of d3/1 is east|)) (or (not |startup side of d3/1 is west|)
    (not |operational side of d3/1 is west|)))))
(declare-const n343 Bool)
(assert (= n343 (and (not |d3 is on this side|) (xor |d3/2 enabled| |d3/2 enabled in startup|))))
(declare-const n344 Bool)
(assert (= n344 (and (not |d3 is on this side|) (or (not |side of d3/2 is none|)
    (not |startup side of d3/2 is none|)) (or (not |side of d3/2 is east|)
    (not |startup side of d3/2 is east|)) (or (not |side of d3/2 is west|)
    (not |startup side of d3/2 is west|)))))
(declare-const n345 Bool)
(assert (= n345 (and (not |d3 is on this side|) (or (not |startup side of d3/2 is none|)
    (not |operational side of d3/2 is none|)) (or (not |startup side of d3/2 is east|)
    (not |operational side of d3/2 is east|)) (or (not |startup side of d3/2 is west|)
    (not |operational side of d3/2 is west|)))))
(declare-const n346 Bool)
(assert (= n346 (and (not n157) (not n158) (not n159) (not n160) (not n161) (not n162) (not n163)
    (not n164) (not n165) (not n166) (not n170) (not n172) (not n175) (not n176) (not n177)
    (not n178) (not n179) (not n180) (not n181) (not n182) (not n183) (not n184) (not n185)
    (not n186) (not n187) (not n188) (not n189) (not n190) (not n191) (not n192) (not n193)
    (not n194) (not n196) (not n198) (not n201) (not n203) (not n206) (not n208) (not n209)
    (not n211) (not n212) (not n214) (not n215) (not n217) (not n222) (not n223) (not n224)
    (not n226) (or (not |d1 is on this side|) (not |d3 is on this side|) n329 n330) (or
    (not |d2 is on this side|) (not |d3 is on this side|) n310 n311))))
(declare-const n347 Bool)
(assert (= n347 (and (not n157) (not n158) (not n159) (not n160) (not n161) (not n162) (not n163)
    (not n164) (not n165) (not n166) (not n167) (not n168) (not n169) (not n170) (not n171)
    (not n172) (not n173) (not n174) (not n175) (not n176) (not n177) (not n178) (not n179)
    (not n180) (not n181) (not n182) (not n183) (not n184) (not n185) (not n186) (not n187)
    (not n188) (not n189) (not n190) (not n191) (not n192) (not n193) (not n194) (not n195)
    (not n196) (not n197) (not n198) (not n199) (not n200) (not n201) (not n202) (not n203)
    (not n204) (not n206) (not n209) (not n211) (not n212) (not n214) (not n215) (not n217)
    (not n222) (not n223) (not n224) (not n225) (not n226) (not n227))))
(declare-const n348 Bool)
(assert (= n348 (and (not n157) (not n158) (not n159) (not n160) (not n161) (not n162) (not n163)
    (not n164) (not n165) (not n166) (not n167) (not n168) (not n169) (not n170) (not n171)
    (not n172) (not n173) (not n174) (not n175) (not n176) (not n177) (not n178) (not n179)
    (not n180) (not n181) (not n182) (not n183) (not n184) (not n185) (not n186) (not n187)
    (not n188) (not n189) (not n190) (not n191) (not n192) (not n193) (not n194) (not n195)
    (not n196) (not n197) (not n198) (not n199) (not n200) (not n201) (not n202) (not n203)
    (not n204) (not n206) (not n208) (not n209) (not n212) (not n214) (not n215) (not n217)
    (not n222) (not n223) (not n224) (not n225) (not n226) (not n227))))
(declare-const n349 Bool)
(assert (= n349 (and (not n157) (not n158) (not n159) (not n160) (not n161) (not n162) (not n163)
    (not n164) (not n165) (not n166) (not n167) (not n168) (not n169) (not n170) (not n171)
    (not n172) (not n173) (not n174) (not n175) (not n176) (not n177) (not n178) (not n179)
    (not n180) (not n181) (not n182) (not n183) (not n184) (not n185) (not n186) (not n187)
    (not n188) (not n189) (not n190) (not n191) (not n192) (not n193) (not n194) (not n195)
    (not n196) (not n197) (not n198) (not n199) (not n200) (not n201) (not n202) (not n203)
    (not n204) (not n206) (not n208) (not n209) (not n211) (not n212) (not n215) (not n217)
    (not n222) (not n223) (not n224) (not n225) (not n226) (not n227))))
(declare-const n350 Bool)
(assert (= n350 (and (not n157) (not n158) (not n159) (not n160) (not n161) (not n162) (not n163)
    (not n164) (not n165) (not n166) (not n167) (not n168) (not n169) (not n170) (not n171)
    (not n172) (not n173) (not n174) (not n175) (not n176) (not n177) (not n178) (not n179)
    (not n180) (not n181) (not n182) (not n183) (not n184) (not n185) (not n186) (not n187)
    (not n188) (not n189) (not n190) (not n191) (not n192) (not n193) (not n194) (not n195)
    (not n196) (not n197) (not n198) (not n199) (not n200) (not n201) (not n202) (not n203)
    (not n204) (not n206) (not n208) (not n209) (not n211) (not n212) (not n214) (not n215)
    (not n222) (not n223) (not n224) (not n225) (not n226) (not n227))))
(declare-const n351 Bool)
(assert (= n351 (and |d1 is on this side| (or (xor (and |power of d1 is up| |crashes left is 1|)
    (and |crashes left is 1| n14)) (and |power of d1 is up| |crashes left is 1| (or n297 n300 n301
    n320 n338 (and (not |d1 is on this side|) (not |power of d1 is starting|)) n157 n158 n159 n160
    n161 n162 n163 n164 n165 n166 n167 n168 n169 n170 n171 n172 n173 n174 n175 n176 n177 n178 n179
    n180 n181 n182 n183 n184 n185 n186 n187 n188 n189 n190 n191 n192 n193 n194 n195 n196 n197 n198
    n199 n200 n201 n202 n203 n204 n206 n208 n209 n211 n212 n214 n215 n217))))))
(declare-const n352 Bool)
(assert (= n352 (and |d2 is on this side| (or (xor (and |power of d2 is up| |crashes left is 1|)
    (and |crashes left is 1| n33)) (and |power of d2 is up| |crashes left is 1| (or n300 n316 n320
    n321 n339 (and (not |d2 is on this side|) (not |power of d2 is starting|)) n157 n158 n159 n160
    n163 n164 n165 n166 n167 n168 n169 n170 n171 n172 n175 n176 n177 n178 n179 n180 n181 n182 n183
    n184 n185 n186 n187 n188 n189 n190 n191 n192 n193 n194 n195 n196 n197 n198 n199 n200 n201 n202
    n203 n204 n206 n208 n209 n211 n212 n214 n215 n217 n222 n223 n225 n227))))))
(declare-const n353 Bool)
(assert (= n353 (and |d3 is on this side| (or (xor (and |power of d3 is up| |crashes left is 1|)
    (and |crashes left is 1| n43)) (and |power of d3 is up| |crashes left is 1| (or n301 n321 n333
    n338 n339 (and (not |d3 is on this side|) (not |power of d3 is starting|)) n157 n158 n159 n160
    n161 n162 n163 n164 n165 n166 n169 n170 n171 n172 n175 n176 n177 n178 n179 n180 n181 n182 n183
    n184 n185 n186 n187 n188 n189 n190 n191 n192 n193 n194 n195 n196 n197 n198 n199 n200 n201 n202
    n203 n204 n206 n208 n209 n211 n212 n214 n215 n217 n222 n223 n224 n226))))))
(declare-const n354 Bool)
(assert (= n354 (and |d1 is on this side| (or (xor (and |power of d1 is starting|
    |late starts left is 1|) (and |late starts left is 1| n13)) (and |power of d1 is starting|
    |late starts left is 1| (or (not n314) n296 n298 n299 n300 n301 n302 n303 n304 n305 n306 n307
    n308 n309 (and (not |d1 is on this side|) (not |leader of d1 is d1|))))))))
(declare-const n355 Bool)
(assert (= n355 (and |d2 is on this side| (or (xor (and |power of d2 is starting|
    |late starts left is 1|) (and |late starts left is 1| n32)) (and |power of d2 is starting|
    |late starts left is 1| (or (not n331) n315 n317 n318 n319 n320 n321 n322 n323 n324 n325 n326
    n327 n328 (and (not |d2 is on this side|) (not |leader of d2 is d2|))))))))
(declare-const n356 Bool)
(assert (= n356 (and |d3 is on this side| (or (xor (and |power of d3 is starting|
    |late starts left is 1|) (and |late starts left is 1| n42)) (and |power of d3 is starting|
    |late starts left is 1| (or (not n346) n332 n334 n335 n336 n337 n338 n339 n340 n341 n342 n343
    n344 n345 (and (not |d3 is on this side|) (not |leader of d3 is d3|))))))))
(declare-const n357 Bool)
(assert (= n357 (and (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n153)
    (not n218))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n153)
    (not n219))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n220)
    (not n221))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n220)
    (not n228))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n220)
    (not n229))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n220)
    (not n230))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n220)
    (not n231))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n220)
    (not n236))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n220)
    (not n237))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n258) (or
    |s10 done| |halted| n259))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and
    (not n258) (or |s11 done| |halted| n293))) (or (not |d1 is on this side|)
    (not |d2 is on this side|) (and (= (and (not |d1--d2 plugged|) (not |rival plugged|)) (and
    (not n127) (not n133))) (not n294))) (or (not |d1 is on this side|) (not |d2 is on this side|)
    (and (not n205) (or |s13 done| |halted| (and (or (not |d1--d2 plugged|) n52) (not n157)
    (not n158) (not n159) (not n160) (not n161) (not n162) (not n163) (not n164) (not n165)
    (not n166) (not n167) (not n168) (not n169) (not n170) (not n171) (not n172) (not n173)
    (not n174) (not n175) (not n176) (not n177) (not n178) (not n179) (not n180) (not n181)
    (not n182) (not n183) (not n184) (not n185) (not n186) (not n187) (not n188) (not n189)
    (not n190) (not n191) (not n192) (not n193) (not n194) (not n195) (not n196) (not n197)
    (not n198) (not n199) (not n200) (not n201) (not n202) (not n203) (not n204) (not n208)
    (not n209) (not n211) (not n212) (not n214) (not n215) (not n217) (not n222) (not n223)
    (not n224) (not n225) (not n226) (not n227))))) (or (not |d1 is on this side|)
    (not |d2 is on this side|) |s14 done| |halted| n295) (or (not |d1 is on this side|)
    (not |d2 is on this side|) |s15 done| |halted| n295) (or (not |d1 is on this side|) (and (=
    |power of d1 is starting| n13) (or (not |power of d1 is starting|) (and (not n296) (not n297)
    (not n298) (not n299) (not n300) (not n301) (not n302) (not n303) (not n304) (not n305)
    (not n306) (not n307) (not n308) (not n309) n314)))) (or (not |d2 is on this side|) (and (=
    |power of d2 is starting| n32) (or (not |power of d2 is starting|) (and (not n315) (not n316)
    (not n317) (not n318) (not n319) (not n320) (not n321) (not n322) (not n323) (not n324)
    (not n325) (not n326) (not n327) (not n328) n331)))) (or (not |d3 is on this side|) (and (=
    |power of d3 is starting| n42) (or (not |power of d3 is starting|) (and (not n332) (not n333)
    (not n334) (not n335) (not n336) (not n337) (not n338) (not n339) (not n340) (not n341)
    (not n342) (not n343) (not n344) (not n345) n346)))) (or (not |d1 is on this side|)
    (not |d2 is on this side|) (and (= (and |d1--d2 plugged| (not |d1--d2 broken|)
    |cable breaks left is 1|) (and |cable breaks left is 1| n127 (not n128))) (or
    (not |d1--d2 plugged|) |d1--d2 broken| (not |cable breaks left is 1|) (and (or |d1--d2 broken|
    n52) n347)))) (or (not |d1 is on this side|) (not |d3 is on this side|) (and (= (and
    |d1--d3 plugged| (not |d1--d3 broken|) |cable breaks left is 1|) (and |cable breaks left is 1|
    n129 (not n130))) (or (not |d1--d3 plugged|) |d1--d3 broken| (not |cable breaks left is 1|) (and
    (or |d1--d3 broken| n54) n348)))) (or (not |d2 is on this side|) (not |d3 is on this side|) (and
    (= (and |d2--d3 plugged| (not |d2--d3 broken|) |cable breaks left is 1|) (and
    |cable breaks left is 1| n131 (not n132))) (or (not |d2--d3 plugged|) |d2--d3 broken|
    (not |cable breaks left is 1|) (and (or |d2--d3 broken| n57) n349)))) (or
    (not |d1 is on this side|) (not |d3 is on this side|) (and (= (and |rival plugged|
    (not |rival broken|) |cable breaks left is 1|) (and |cable breaks left is 1| n133 (not n134)))
    (or (not |rival plugged|) |rival broken| (not |cable breaks left is 1|) (and (or |rival broken|
    n54) n350)))) (or (not |d1 is on this side|) (not |d2 is on this side|) (and (not n207) (or
    (not |d1--d2 broken|) (and n347 (or (not |d1--d2 broken|) n52))))) (or
    (not |d1 is on this side|) (not |d3 is on this side|) (and (not n210) (or (not |d1--d3 broken|)
    (and n348 (or (not |d1--d3 broken|) n54))))) (or (not |d2 is on this side|)
    (not |d3 is on this side|) (and (not n213) (or (not |d2--d3 broken|) (and n349 (or
    (not |d2--d3 broken|) n57))))) (or (not |d1 is on this side|) (not |d3 is on this side|) (and
    (not n216) (or (not |rival broken|) (and n350 (or (not |rival broken|) n54))))) (not n351)
    (not n352) (not n353) (or (not |d1 is on this side|) (not |d2 is on this side|) |s1 done|
    (not |omissions left is 1|) |halted| n295) (or (not |d1 is on this side|)
    (not |d2 is on this side|) |s2 done| (not |omissions left is 1|) |halted| n295) (or
    (not |d1 is on this side|) (not |d2 is on this side|) |s3 done| (not |omissions left is 1|)
    |halted| n295) (or (not |d1 is on this side|) (not |d2 is on this side|) |s4 done|
    (not |omissions left is 1|) |halted| n295) (or (not |d1 is on this side|)
    (not |d2 is on this side|) |s5 done| (not |omissions left is 1|) |halted| n295) (or
    (not |d1 is on this side|) (not |d2 is on this side|) |s6 done| (not |omissions left is 1|)
    |halted| n295) (or (not |d1 is on this side|) (not |d2 is on this side|) |s7 done|
    (not |omissions left is 1|) |halted| n295) (or (not |d1 is on this side|)
    (not |d2 is on this side|) |s8 done| (not |omissions left is 1|) |halted| n295) (or
    (not |d1 is on this side|) (not |d2 is on this side|) |s9 done| (not |omissions left is 1|)
    |halted| n295) (or (not |d1 is on this side|) (not |d2 is on this side|) |s10 done|
    (not |omissions left is 1|) |halted| n295) (or (not |d1 is on this side|)
    (not |d2 is on this side|) |s11 done| (not |omissions left is 1|) |halted| n295) (or
    (not |d1 is on this side|) (not |d2 is on this side|) |s12 done| (not |omissions left is 1|)
    |halted| n295) (or (not |d1 is on this side|) (not |d2 is on this side|) |s13 done|
    (not |omissions left is 1|) |halted| n295) (not n354) (not n355) (not n356))))
; Every variable has one value, and the laws of all states apply.
(assert (and n6 (or |power of d1 is up| |leader of d1 is none|) (or |power of d2 is up|
    |leader of d2 is none|) (or |power of d3 is up| |leader of d3 is none|) (or
    (not |d1 senior to d2|) (and (not |d2 senior to d1|) (not n135) (not n136))) (or
    (not |d1 senior to d2|) |d1 senior to d3| |d3 senior to d2| n137) (or (not |d1 senior to d3|)
    (and (not |d3 senior to d1|) (not n135) (not n137))) (or |d1 senior to d2|
    (not |d1 senior to d3|) |d2 senior to d3| n136) (or (not |d2 senior to d1|) (and
    (not |d1 senior to d2|) (not n135) (not n136))) (or (not |d2 senior to d1|) |d2 senior to d3|
    |d3 senior to d1| n137) (or (not |d2 senior to d3|) (and (not |d3 senior to d2|) (not n136)
    (not n137))) (or |d1 senior to d3| |d2 senior to d1| (not |d2 senior to d3|) n135) (or
    (not |d3 senior to d1|) (and (not |d1 senior to d3|) (not n135) (not n137))) (or
    |d2 senior to d1| (not |d3 senior to d1|) |d3 senior to d2| n136) (or (not |d3 senior to d2|)
    (and (not |d2 senior to d3|) (not n136) (not n137))) (or |d1 senior to d2| |d3 senior to d1|
    (not |d3 senior to d2|) n135) (or (not |d1--d2 plugged|) (not |rival plugged|)) (or
    (not |d1--d3 plugged|) (not |rival plugged|))))
; A second state is the same on this side, and any on the other side (marked ').
(assert (and n11 (or n14 n16) (or n33 n35) (or n43 n45) (or (not n53) (and (not n56) (not n144)
    (not n145))) (or (not n53) n55 n60 n146) (or (not n55) (and (not n59) (not n144) (not n146)))
    (or n53 (not n55) n58 n145) (or (not n56) (and (not n53) (not n144) (not n145))) (or (not n56)
    n58 n59 n146) (or (not n58) (and (not n60) (not n145) (not n146))) (or n55 n56 (not n58) n144)
    (or (not n59) (and (not n55) (not n144) (not n146))) (or n56 (not n59) n60 n145) (or (not n60)
    (and (not n58) (not n145) (not n146))) (or n53 n59 (not n60) n144) (or (not n127) (not n133))
    (or (not n129) (not n133))))
; In neither state a cable is plugged between the sides.
(assert (and (or (not n127) (not n154)) (or (not n129) (not n155)) (or (not n131) (not n156)) (or
    (not n133) (not n155)) (or (not |d1--d2 plugged|) (not n154)) (or (not |d1--d3 plugged|)
    (not n155)) (or (not |d2--d3 plugged|) (not n156)) (or (not |rival plugged|) (not n155))))
; And this is false: an event of this side may happen in both or in neither, and is refused in both
; or in neither; it leaves this side the same, and the other side as it was.
(assert (not n357))
(check-sat)
(exit)
