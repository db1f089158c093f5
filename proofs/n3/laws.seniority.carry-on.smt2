; What the lemma takes for given, together with the opposite of what it claims. There is no such
; state: the lemma holds.
;
; Of 3 devices, any two of which may be linked. proofs/laws.md of cairn tells the lemma, with a
; proof by hand for every number of devices. Written by proofs/generate, from the formulas that
; cairn proves with.
(set-info :smt-lib-version 2.6)
(set-logic QF_UF)
(set-info :status unsat)
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
(declare-const |d1--d2 plugged| Bool)
(declare-const |d1--d3 plugged| Bool)
(declare-const |d2--d3 plugged| Bool)
(declare-const |rival plugged| Bool)
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
(declare-const n1 Bool)
(assert (= n1 (and (or |power of d1 is off| |power of d1 is starting| |power of d1 is up|
    |power of d1 is held|) (or (not |power of d1 is off|) (not |power of d1 is starting|)) (or
    (not |power of d1 is up|) (and (not |power of d1 is off|) (not |power of d1 is starting|))) (or
    (not |power of d1 is held|) (and (not |power of d1 is off|) (not |power of d1 is starting|)
    (not |power of d1 is up|))) (or |leader of d1 is none| |leader of d1 is d1| |leader of d1 is d2|
    |leader of d1 is d3|) (or (not |leader of d1 is none|) (not |leader of d1 is d1|)) (or
    (not |leader of d1 is d2|) (and (not |leader of d1 is none|) (not |leader of d1 is d1|))) (or
    (not |leader of d1 is d3|) (and (not |leader of d1 is none|) (not |leader of d1 is d1|)
    (not |leader of d1 is d2|))) (or |number of d1 is 1| |number of d1 is 2| |number of d1 is 3|)
    (or (not |number of d1 is 1|) (not |number of d1 is 2|)) (or (not |number of d1 is 3|) (and
    (not |number of d1 is 1|) (not |number of d1 is 2|))) (or |next number of d1 is 1|
    |next number of d1 is 2| |next number of d1 is 3|) (or (not |next number of d1 is 1|)
    (not |next number of d1 is 2|)) (or (not |next number of d1 is 3|) (and
    (not |next number of d1 is 1|) (not |next number of d1 is 2|))) (or |priority of d1 is 1|
    |priority of d1 is 2| |priority of d1 is 3|) (or (not |priority of d1 is 1|)
    (not |priority of d1 is 2|)) (or (not |priority of d1 is 3|) (and (not |priority of d1 is 1|)
    (not |priority of d1 is 2|))) (or |startup priority of d1 is 1| |startup priority of d1 is 2|
    |startup priority of d1 is 3|) (or (not |startup priority of d1 is 1|)
    (not |startup priority of d1 is 2|)) (or (not |startup priority of d1 is 3|) (and
    (not |startup priority of d1 is 1|) (not |startup priority of d1 is 2|))) (or
    |power of d2 is off| |power of d2 is starting| |power of d2 is up| |power of d2 is held|) (or
    (not |power of d2 is off|) (not |power of d2 is starting|)) (or (not |power of d2 is up|) (and
    (not |power of d2 is off|) (not |power of d2 is starting|))) (or (not |power of d2 is held|)
    (and (not |power of d2 is off|) (not |power of d2 is starting|) (not |power of d2 is up|))))))
(declare-const n2 Bool)
(assert (= n2 (and n1 (or |leader of d2 is none| |leader of d2 is d1| |leader of d2 is d2|
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
(declare-const n3 Bool)
(assert (= n3 (and (not |power of d1 is up|) (not |power of d1 is held|))))
(declare-const n4 Bool)
(assert (= n4 (and (not |power of d2 is up|) (not |power of d2 is held|))))
(declare-const n5 Bool)
(assert (= n5 (and (not |power of d3 is up|) (not |power of d3 is held|))))
(declare-const n6 Bool)
(assert (= n6 (and |power of d1 is up| |power of d3 is up| |d1--d3 plugged|)))
(declare-const n7 Bool)
(assert (= n7 (and |power of d1 is up| |power of d3 is up| |rival plugged|)))
(declare-const n8 Bool)
(assert (= n8 (and (or (not |power of d2 is up|) (not |power of d3 is up|) (not |d2--d3 plugged|))
    (or (not |power of d1 is up|) (not |power of d2 is up|) (not |d1--d2 plugged|) (and (not n6)
    (not n7))))))
(declare-const n9 Bool)
(assert (= n9 (and (not n6) (not n7) (or (not |power of d1 is up|) (not |power of d2 is up|)
    (not |d1--d2 plugged|) n8))))
(declare-const n10 Bool)
(assert (= n10 (and (or (not |power of d1 is up|) (not |power of d2 is up|) (not |d1--d2 plugged|))
    (or n8 n9))))
(declare-const n11 Bool)
(assert (= n11 (and (not |power of d1 is off|) |d1 senior to d2|)))
(declare-const n12 Bool)
(assert (= n12 (and (not |power of d1 is off|) |d1 senior to d3|)))
(declare-const n13 Bool)
(assert (= n13 (and (not |power of d1 is off|) |d2 senior to d1|)))
(declare-const n14 Bool)
(assert (= n14 (and (not |power of d1 is off|) |d3 senior to d1|)))
(declare-const n15 Bool)
(assert (= n15 (and |power of d1 is off| |d1 senior to d2|)))
(declare-const n16 Bool)
(assert (= n16 (and |power of d1 is off| |d1 senior to d3|)))
(declare-const n17 Bool)
(assert (= n17 (and |power of d1 is off| |d2 senior to d1|)))
(declare-const n18 Bool)
(assert (= n18 (and |power of d1 is off| |d3 senior to d1|)))
(declare-const n19 Bool)
(assert (= n19 (and (not |power of d1 is up|) (not |power of d1 is held|) |d1 senior to d2|)))
(declare-const n20 Bool)
(assert (= n20 (and (not |power of d1 is up|) (not |power of d1 is held|) |d1 senior to d3|)))
(declare-const n21 Bool)
(assert (= n21 (and |power of d1 is up| (not |leader of d1 is none|))))
(declare-const n22 Bool)
(assert (= n22 (and |power of d1 is up| |leader of d1 is d1|)))
(declare-const n23 Bool)
(assert (= n23 (and |power of d2 is up| (not |leader of d2 is none|))))
(declare-const n24 Bool)
(assert (= n24 (and |power of d2 is up| |leader of d2 is d2|)))
(declare-const n25 Bool)
(assert (= n25 (and |power of d3 is up| (not |leader of d3 is none|))))
(declare-const n26 Bool)
(assert (= n26 (and |power of d3 is up| |leader of d3 is d3|)))
(declare-const n27 Bool)
(assert (= n27 (and (not |number of d2 is 2|) (not |number of d2 is 3|))))
(declare-const n28 Bool)
(assert (= n28 (and (not |number of d1 is 2|) (not |number of d1 is 3|))))
(declare-const n29 Bool)
(assert (= n29 (and (or (not |number of d1 is 3|) (not |number of d2 is 2|)) (or
    (not |number of d2 is 1|) n28))))
(declare-const n30 Bool)
(assert (= n30 (and |priority of d1 is 3| |priority of d2 is 2|)))
(declare-const n31 Bool)
(assert (= n31 (and (not |priority of d1 is 2|) (not |priority of d1 is 3|))))
(declare-const n32 Bool)
(assert (= n32 (and |priority of d2 is 1| (not n31))))
(declare-const n33 Bool)
(assert (= n33 (and |priority of d1 is 2| |priority of d2 is 3|)))
(declare-const n34 Bool)
(assert (= n34 (and (not |priority of d2 is 2|) (not |priority of d2 is 3|))))
(declare-const n35 Bool)
(assert (= n35 (and |priority of d1 is 1| (not n34))))
(declare-const n36 Bool)
(assert (= n36 (and (or |d1 senior to d2| (and (not |d2 senior to d1|) (or (and |number of d1 is 2|
    |number of d2 is 3|) (and |number of d1 is 1| (not n27)) n29))) (not n33) (not n35))))
(declare-const n37 Bool)
(assert (= n37 (and |power of d2 is up| |leader of d2 is d2| (not n10) (not n30) (not n32) (not n36))))
(declare-const n38 Bool)
(assert (= n38 (and (not |number of d3 is 2|) (not |number of d3 is 3|))))
(declare-const n39 Bool)
(assert (= n39 (and (or (not |number of d1 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n28))))
(declare-const n40 Bool)
(assert (= n40 (and |priority of d1 is 3| |priority of d3 is 2|)))
(declare-const n41 Bool)
(assert (= n41 (and |priority of d3 is 1| (not n31))))
(declare-const n42 Bool)
(assert (= n42 (and |priority of d1 is 2| |priority of d3 is 3|)))
(declare-const n43 Bool)
(assert (= n43 (and (not |priority of d3 is 2|) (not |priority of d3 is 3|))))
(declare-const n44 Bool)
(assert (= n44 (and |priority of d1 is 1| (not n43))))
(declare-const n45 Bool)
(assert (= n45 (and (or |d1 senior to d3| (and (not |d3 senior to d1|) (or (and |number of d1 is 2|
    |number of d3 is 3|) (and |number of d1 is 1| (not n38)) n39))) (not n42) (not n44))))
(declare-const n46 Bool)
(assert (= n46 (and |power of d3 is up| |leader of d3 is d3| (not n9) (not n40) (not n41) (not n45))))
(declare-const n47 Bool)
(assert (= n47 (and (not n30) (not n32) (or |d2 senior to d1| (and (not |d1 senior to d2|) (not n29))))))
(declare-const n48 Bool)
(assert (= n48 (and |power of d1 is up| |leader of d1 is d1| (not n10) (not n33) (not n35) (not n47))))
(declare-const n49 Bool)
(assert (= n49 (and (or (not |number of d2 is 3|) (not |number of d3 is 2|)) (or
    (not |number of d3 is 1|) n27))))
(declare-const n50 Bool)
(assert (= n50 (and |priority of d2 is 3| |priority of d3 is 2|)))
(declare-const n51 Bool)
(assert (= n51 (and |priority of d3 is 1| (not n34))))
(declare-const n52 Bool)
(assert (= n52 (and |priority of d2 is 2| |priority of d3 is 3|)))
(declare-const n53 Bool)
(assert (= n53 (and |priority of d2 is 1| (not n43))))
(declare-const n54 Bool)
(assert (= n54 (and (or |d2 senior to d3| (and (not |d3 senior to d2|) (or (and |number of d2 is 2|
    |number of d3 is 3|) (and |number of d2 is 1| (not n38)) n49))) (not n52) (not n53))))
(declare-const n55 Bool)
(assert (= n55 (and |power of d3 is up| |leader of d3 is d3| (not n8) (not n50) (not n51) (not n54))))
(declare-const n56 Bool)
(assert (= n56 (and (not n40) (not n41) (or |d3 senior to d1| (and (not |d1 senior to d3|) (not n39))))))
(declare-const n57 Bool)
(assert (= n57 (and |power of d1 is up| |leader of d1 is d1| (not n9) (not n42) (not n44) (not n56))))
(declare-const n58 Bool)
(assert (= n58 (and (not n50) (not n51) (or |d3 senior to d2| (and (not |d2 senior to d3|) (not n49))))))
(declare-const n59 Bool)
(assert (= n59 (and |power of d2 is up| |leader of d2 is d2| (not n8) (not n52) (not n53) (not n58))))
(declare-const n60 Bool)
(assert (= n60 (and |leader of d1 is d2| |power of d2 is up| |leader of d2 is d2| (not n10)
    (not n48) (not n55))))
(declare-const n61 Bool)
(assert (= n61 (and |leader of d1 is d3| |power of d3 is up| |leader of d3 is d3| (not n9) (not n57)
    (not n59))))
(declare-const n62 Bool)
(assert (= n62 (and |power of d1 is up| |leader of d1 is d1| |leader of d2 is d1| (not n10)
    (not n37) (not n46))))
(declare-const n63 Bool)
(assert (= n63 (and |leader of d2 is d3| |power of d3 is up| |leader of d3 is d3| (not n8) (not n57)
    (not n59))))
(declare-const n64 Bool)
(assert (= n64 (and |power of d1 is up| |leader of d1 is d1| |leader of d3 is d1| (not n9) (not n37)
    (not n46))))
(declare-const n65 Bool)
(assert (= n65 (and |power of d2 is up| |leader of d2 is d2| |leader of d3 is d2| (not n8) (not n48)
    (not n55))))
(declare-const n66 Bool)
(assert (= n66 (and (or (not |number of d1 is 1|) (not |number of d2 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d2 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d2 is 3|)))))
(declare-const n67 Bool)
(assert (= n67 (and (not n24) (or (not |leader of d2 is d1|) n10) (or (not |leader of d2 is d3|) n8))))
(declare-const n68 Bool)
(assert (= n68 (and |leader of d1 is d1| |leader of d2 is d1|)))
(declare-const n69 Bool)
(assert (= n69 (and |leader of d1 is d2| |leader of d2 is d2|)))
(declare-const n70 Bool)
(assert (= n70 (and |leader of d1 is d3| |leader of d2 is d3|)))
(declare-const n71 Bool)
(assert (= n71 (and |leader of d1 is d1| (not n37) (not n46))))
(declare-const n72 Bool)
(assert (= n72 (and (not n10) (not n66) (or (and |power of d1 is up| |leader of d1 is none| (or n23
    n33 n35 n47)) (and |power of d1 is up| (not |leader of d1 is none|) |power of d2 is up|
    (not |leader of d2 is none|) (not n60) (not n61) (not n67) (not n68) (not n69) (not n70)
    (not n71))))))
(declare-const n73 Bool)
(assert (= n73 (and (or (not |number of d1 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d1 is 2|) (not |number of d3 is 2|)) (or (not |number of d1 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n74 Bool)
(assert (= n74 (and (not n26) (or (not |leader of d3 is d1|) n9) (or (not |leader of d3 is d2|) n8))))
(declare-const n75 Bool)
(assert (= n75 (and |leader of d1 is d1| |leader of d3 is d1|)))
(declare-const n76 Bool)
(assert (= n76 (and |leader of d1 is d2| |leader of d3 is d2|)))
(declare-const n77 Bool)
(assert (= n77 (and |leader of d1 is d3| |leader of d3 is d3|)))
(declare-const n78 Bool)
(assert (= n78 (and (not n9) (not n73) (or (and |power of d1 is up| |leader of d1 is none| (or n25
    n42 n44 n56)) (and |power of d1 is up| (not |leader of d1 is none|) |power of d3 is up|
    (not |leader of d3 is none|) (not n60) (not n61) (not n71) (not n74) (not n75) (not n76)
    (not n77))))))
(declare-const n79 Bool)
(assert (= n79 (and |power of d1 is up| (not |leader of d1 is none|) (or n22 (and
    |power of d2 is up| |leader of d2 is d2| (not n10)) (and |power of d3 is up|
    |leader of d3 is d3| (not n9))) (not n60) (not n61) (not n71))))
(declare-const n80 Bool)
(assert (= n80 (and (not n72) (not n78) n79)))
(declare-const n81 Bool)
(assert (= n81 (and (not n22) (or (not |leader of d1 is d2|) n10) (or (not |leader of d1 is d3|) n9))))
(declare-const n82 Bool)
(assert (= n82 (and |leader of d2 is d2| (not n48) (not n55))))
(declare-const n83 Bool)
(assert (= n83 (and (not n10) (not n66) (or (and |power of d2 is up| |leader of d2 is none| (or n21
    n30 n32 n36)) (and |power of d1 is up| (not |leader of d1 is none|) |power of d2 is up|
    (not |leader of d2 is none|) (not n62) (not n63) (not n68) (not n69) (not n70) (not n81)
    (not n82))))))
(declare-const n84 Bool)
(assert (= n84 (and (or (not |number of d2 is 1|) (not |number of d3 is 1|)) (or
    (not |number of d2 is 2|) (not |number of d3 is 2|)) (or (not |number of d2 is 3|)
    (not |number of d3 is 3|)))))
(declare-const n85 Bool)
(assert (= n85 (and |leader of d2 is d1| |leader of d3 is d1|)))
(declare-const n86 Bool)
(assert (= n86 (and |leader of d2 is d2| |leader of d3 is d2|)))
(declare-const n87 Bool)
(assert (= n87 (and |leader of d2 is d3| |leader of d3 is d3|)))
(declare-const n88 Bool)
(assert (= n88 (and (not n8) (not n84) (or (and |power of d2 is up| |leader of d2 is none| (or n25
    n52 n53 n58)) (and |power of d2 is up| (not |leader of d2 is none|) |power of d3 is up|
    (not |leader of d3 is none|) (not n62) (not n63) (not n74) (not n82) (not n85) (not n86)
    (not n87))))))
(declare-const n89 Bool)
(assert (= n89 (and |power of d2 is up| (not |leader of d2 is none|) (or n24 (and
    |power of d1 is up| |leader of d1 is d1| (not n10)) (and |power of d3 is up|
    |leader of d3 is d3| (not n8))) (not n62) (not n63) (not n82))))
(declare-const n90 Bool)
(assert (= n90 (and (not n83) (not n88) n89)))
(declare-const n91 Bool)
(assert (= n91 (and |leader of d3 is d3| (not n57) (not n59))))
(declare-const n92 Bool)
(assert (= n92 (and (not n9) (not n73) (or (and |power of d3 is up| |leader of d3 is none| (or n21
    n40 n41 n45)) (and |power of d1 is up| (not |leader of d1 is none|) |power of d3 is up|
    (not |leader of d3 is none|) (not n64) (not n65) (not n75) (not n76) (not n77) (not n81)
    (not n91))))))
(declare-const n93 Bool)
(assert (= n93 (and (not n8) (not n84) (or (and |power of d3 is up| |leader of d3 is none| (or n23
    n50 n51 n54)) (and |power of d2 is up| (not |leader of d2 is none|) |power of d3 is up|
    (not |leader of d3 is none|) (not n64) (not n65) (not n67) (not n85) (not n86) (not n87)
    (not n91))))))
(declare-const n94 Bool)
(assert (= n94 (and |power of d3 is up| (not |leader of d3 is none|) (or n26 (and
    |power of d1 is up| |leader of d1 is d1| (not n9)) (and |power of d2 is up| |leader of d2 is d2|
    (not n8))) (not n64) (not n65) (not n91))))
(declare-const n95 Bool)
(assert (= n95 (and (not n92) (not n93) n94)))
(declare-const n96 Bool)
(assert (= n96 (and |d1 senior to d2| (or |d2 senior to d1| n3 n4))))
(declare-const n97 Bool)
(assert (= n97 (and |d1 senior to d3| (or |d3 senior to d1| n3 n5))))
(declare-const n98 Bool)
(assert (= n98 (and |d2 senior to d1| (or |d1 senior to d2| n3 n4))))
(declare-const n99 Bool)
(assert (= n99 (and |d2 senior to d3| (or |d3 senior to d2| n4 n5))))
(declare-const n100 Bool)
(assert (= n100 (and |d3 senior to d1| (or |d1 senior to d3| n3 n5))))
(declare-const n101 Bool)
(assert (= n101 (and |d3 senior to d2| (or |d2 senior to d3| n4 n5))))
(declare-const n102 Bool)
(assert (= n102 (and (not n96) (or (not |d1 senior to d2|) |d1 senior to d3| |d3 senior to d2| n5)
    (not n97) (or |d1 senior to d2| (not |d1 senior to d3|) |d2 senior to d3| n4) (not n98) (or
    (not |d2 senior to d1|) |d2 senior to d3| |d3 senior to d1| n5) (not n99) (or |d1 senior to d3|
    |d2 senior to d1| (not |d2 senior to d3|) n3) (not n100) (or |d2 senior to d1|
    (not |d3 senior to d1|) |d3 senior to d2| n4) (not n101) (or |d1 senior to d2| |d3 senior to d1|
    (not |d3 senior to d2|) n3))))
(declare-const n103 Bool)
(assert (= n103 (and (or |power of d1 is off| (not |power of d1 is up|)) (or |power of d1 is off|
    (not |power of d1 is held|)))))
(declare-const n104 Bool)
(assert (= n104 (and (or (not |power of d1 is off|) (not |power of d1 is up|)) (or
    (not |power of d1 is off|) (not |power of d1 is held|)))))
(declare-const n105 Bool)
(assert (= n105 (and (not n99) (not n101) (or |power of d2 is up| |power of d2 is held|
    (not |d2 senior to d3|)) (or |power of d3 is up| |power of d3 is held| (not |d3 senior to d2|)))))
(declare-const n106 Bool)
(assert (= n106 (and (not n20) (not n97) (not n100) (or |power of d3 is up| |power of d3 is held|
    (not |d3 senior to d1|)))))
(declare-const n107 Bool)
(assert (= n107 (and (not n19) (not n96) (not n98) (or |power of d2 is up| |power of d2 is held|
    (not |d2 senior to d1|)))))
(declare-const n108 Bool)
(assert (= n108 (and (or (not |power of d1 is up|) n72 n78 n79) (or n80 (and
    (not |power of d1 is held|) (not n72) (not n78))))))
(declare-const n109 Bool)
(assert (= n109 (and (or (not |power of d2 is up|) n83 n88 n89) (or n90 (and
    (not |power of d2 is held|) (not n83) (not n88))))))
(declare-const n110 Bool)
(assert (= n110 (and (or (not |power of d3 is up|) n92 n93 n94) (or n95 (and
    (not |power of d3 is held|) (not n92) (not n93))))))
; Every variable has one value.
(assert (and n2 (or |leader of d3 is none| |leader of d3 is d1| |leader of d3 is d2|
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
    (not |startup priority of d3 is 1|) (not |startup priority of d3 is 2|)))))
; Before: Seniority is a strict weak order among the devices that are up or held, and no other has a
; part in it.
(assert n102)
; And this is false: the same after every event that may happen, after a cold start, and after a
; pass.
(assert (or (and (not |s1 done|) (not |halted|) (or n99 n101 (and (not |power of d1 is off|)
    |d1 senior to d2| (or n4 n13 n103)) (and (not |power of d1 is off|) |d1 senior to d2|
    (not |d1 senior to d3|) (not |d3 senior to d2|) (not n5)) (and (not |power of d1 is off|)
    |d1 senior to d3| (or n5 n14 n103)) (and (not |power of d1 is off|) (not |d1 senior to d2|)
    |d1 senior to d3| (not |d2 senior to d3|) (not n4)) (and (not |power of d1 is off|)
    |d2 senior to d1| (or n4 n11 n103)) (and (not |power of d1 is off|) |d2 senior to d1|
    (not |d2 senior to d3|) (not |d3 senior to d1|) (not n5)) (and |d2 senior to d3| (not n12)
    (not n13) (not n103)) (and (not |power of d1 is off|) |d3 senior to d1| (or n5 n12 n103)) (and
    (not |power of d1 is off|) (not |d2 senior to d1|) |d3 senior to d1| (not |d3 senior to d2|)
    (not n4)) (and |d3 senior to d2| (not n11) (not n14) (not n103)))) (and (not |s2 done|)
    (not |halted|) (or n99 n101 (and |power of d1 is off| |d1 senior to d2| (or n4 n17 n104)) (and
    |power of d1 is off| |d1 senior to d2| (not |d1 senior to d3|) (not |d3 senior to d2|) (not n5))
    (and |power of d1 is off| |d1 senior to d3| (or n5 n18 n104)) (and |power of d1 is off|
    (not |d1 senior to d2|) |d1 senior to d3| (not |d2 senior to d3|) (not n4)) (and
    |power of d1 is off| |d2 senior to d1| (or n4 n15 n104)) (and |power of d1 is off|
    |d2 senior to d1| (not |d2 senior to d3|) (not |d3 senior to d1|) (not n5)) (and
    |d2 senior to d3| (not n16) (not n17) (not n104)) (and |power of d1 is off| |d3 senior to d1|
    (or n5 n16 n104)) (and |power of d1 is off| (not |d2 senior to d1|) |d3 senior to d1|
    (not |d3 senior to d2|) (not n4)) (and |d3 senior to d2| (not n15) (not n18) (not n104)))) (and
    (not |s3 done|) (not |halted|) (or n19 n20 (and (not |power of d1 is up|)
    (not |power of d1 is held|) |d2 senior to d1|) (and (not |power of d1 is up|)
    (not |power of d1 is held|) |d3 senior to d1|) n99 n101 (and (not |power of d1 is up|)
    (not |power of d1 is held|) |d1 senior to d2| (not |d1 senior to d3|) (not |d3 senior to d2|)
    (not n5)) (and (not |power of d1 is up|) (not |power of d1 is held|) (not |d1 senior to d2|)
    |d1 senior to d3| (not |d2 senior to d3|) (not n4)) (and (not |power of d1 is up|)
    (not |power of d1 is held|) |d2 senior to d1| (not |d2 senior to d3|) (not |d3 senior to d1|)
    (not n5)) (and (not |power of d1 is up|) (not |power of d1 is held|) (not |d2 senior to d1|)
    |d3 senior to d1| (not |d3 senior to d2|) (not n4)))) (and (not |s4 done|) (not |halted|)
    (not n102)) (and (not |s5 done|) (not |halted|) (not n102)) (and (not |s6 done|) (not |halted|)
    (not n102)) (and (not |s7 done|) (not |halted|) (not n102)) (and (not |s8 done|) (not |halted|)
    (not n102)) (and (not |s9 done|) (not |halted|) (not n102)) (and (not |s10 done|) (not |halted|)
    (not n102)) (and (not |s11 done|) (not |halted|) (not n102)) (and (not |s12 done|)
    (not |halted|) (not n102)) (and (not |s13 done|) (not |halted|) (not n102)) (and
    (not |s14 done|) (not |halted|) (not n102)) (and (not |s15 done|) (not |halted|) (not n102))
    (and |power of d1 is starting| (not n105)) (and |power of d2 is starting| (not n106)) (and
    |power of d3 is starting| (not n107)) (and |d1--d2 plugged| |cable breaks left is 1| (not n102))
    (and |d1--d3 plugged| |cable breaks left is 1| (not n102)) (and |d2--d3 plugged|
    |cable breaks left is 1| (not n102)) (and |rival plugged| |cable breaks left is 1| (not n102))
    (and |power of d1 is up| |crashes left is 1| (or n99 n101)) (and |power of d2 is up|
    |crashes left is 1| (or n97 n100)) (and |power of d3 is up| |crashes left is 1| (or n96 n98))
    (and (not |s1 done|) |omissions left is 1| (not |halted|) (not n102)) (and (not |s2 done|)
    |omissions left is 1| (not |halted|) (not n102)) (and (not |s3 done|) |omissions left is 1|
    (not |halted|) (not n102)) (and (not |s4 done|) |omissions left is 1| (not |halted|) (not n102))
    (and (not |s5 done|) |omissions left is 1| (not |halted|) (not n102)) (and (not |s6 done|)
    |omissions left is 1| (not |halted|) (not n102)) (and (not |s7 done|) |omissions left is 1|
    (not |halted|) (not n102)) (and (not |s8 done|) |omissions left is 1| (not |halted|) (not n102))
    (and (not |s9 done|) |omissions left is 1| (not |halted|) (not n102)) (and (not |s10 done|)
    |omissions left is 1| (not |halted|) (not n102)) (and (not |s11 done|) |omissions left is 1|
    (not |halted|) (not n102)) (and (not |s12 done|) |omissions left is 1| (not |halted|) (not n102))
    (and (not |s13 done|) |omissions left is 1| (not |halted|) (not n102)) (and
    |power of d1 is starting| |late starts left is 1| (not n105)) (and |power of d2 is starting|
    |late starts left is 1| (not n106)) (and |power of d3 is starting| |late starts left is 1|
    (not n107)) (and |d1 senior to d2| (not n80) (not n90) (or (and |d2 senior to d1| (not n80)
    (not n90)) n108 n109)) (and |d1 senior to d2| (not n80) (not n90) (not n110) (or
    (not |d1 senior to d3|) n95) (or (not |d3 senior to d2|) n95)) (and |d1 senior to d3| (not n80)
    (not n95) (or (and |d3 senior to d1| (not n80) (not n95)) n108 n110)) (and |d1 senior to d3|
    (not n80) (not n95) (not n109) (or (not |d1 senior to d2|) n90) (or (not |d2 senior to d3|) n90))
    (and |d2 senior to d1| (not n80) (not n90) (or (and |d1 senior to d2| (not n80) (not n90)) n108
    n109)) (and |d2 senior to d1| (not n80) (not n90) (not n110) (or (not |d2 senior to d3|) n95)
    (or (not |d3 senior to d1|) n95)) (and |d2 senior to d3| (not n90) (not n95) (or (and
    |d3 senior to d2| (not n90) (not n95)) n109 n110)) (and |d2 senior to d3| (not n90) (not n95)
    (not n108) (or (not |d1 senior to d3|) n80) (or (not |d2 senior to d1|) n80)) (and
    |d3 senior to d1| (not n80) (not n95) (or (and |d1 senior to d3| (not n80) (not n95)) n108 n110))
    (and |d3 senior to d1| (not n80) (not n95) (not n109) (or (not |d2 senior to d1|) n90) (or
    (not |d3 senior to d2|) n90)) (and |d3 senior to d2| (not n90) (not n95) (or (and
    |d2 senior to d3| (not n90) (not n95)) n109 n110)) (and |d3 senior to d2| (not n90) (not n95)
    (not n108) (or (not |d1 senior to d2|) n80) (or (not |d3 senior to d1|) n80))))
(check-sat)
(exit)
